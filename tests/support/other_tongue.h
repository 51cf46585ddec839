#pragma once

#include "core/util/say.h"

namespace pw::testing {

/// A language with a decimal comma for as long as this lives. Without a translator it still says English.
class OtherTongue {
public:
    explicit OtherTongue(std::string (*translate)(const char*, long long) = nullptr) : m_before(tongue()) {
        setTongue({translate, ','});
    }
    ~OtherTongue() { setTongue(m_before); }
    OtherTongue(const OtherTongue&) = delete;
    OtherTongue& operator=(const OtherTongue&) = delete;

private:
    Tongue m_before;
};

} // namespace pw::testing
