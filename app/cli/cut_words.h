#pragma once

#include "app/engine/write.h"

#include <string>

namespace CLI {
class App;
}

namespace pw::cli {

/// What may be said after `cut`, as typed.
struct CutWords {
    bool path = false, r12 = false;
    std::string feed, pierce;
};

void addCutWords(CLI::App& command, CutWords& words);

/// Throws BadInput for a feed or a pierce time that cannot be understood.
engine::CutChoices choicesOf(const CutWords& words, bool anyway);

} // namespace pw::cli
