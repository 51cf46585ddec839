#pragma once

#include <cstdint>
#include <iostream>
#include <random>

namespace pw::testing {

/// Figures by chance, the same on every system; the seed is printed.
class Chance {
public:
    explicit Chance(std::uint32_t seed) : m_random(seed) { std::cout << "seed " << seed << '\n'; }

    /// Even in [low, high).
    double between(double low, double high) { return low + (high - low) * (m_random() / 4294967296.0); }

private:
    std::mt19937 m_random;
};

} // namespace pw::testing
