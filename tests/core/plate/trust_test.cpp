#include "core/plate/trust.h"

#include <gtest/gtest.h>
#include <limits>

using namespace pw::plate;

namespace {

Trust sound() {
    Trust trust;
    trust.residual = trust.imbalance = trust.tipping = trust.held = 1e-9;
    trust.meshPercent = 0.5;
    return trust;
}

constexpr double kNan = std::numeric_limits<double>::quiet_NaN();

} // namespace

TEST(Trust, SoundFiguresRaiseNoDoubt) {
    EXPECT_EQ(doubtOf(sound()), std::nullopt);
}

TEST(Trust, EachFigureOutOfBoundsOrNotANumberIsNamed) {
    const auto doubtWith = [](double Trust::*figure, double value) {
        Trust trust = sound();
        trust.*figure = value;
        return doubtOf(trust).value_or("");
    };
    for (double bad : {1e-3, kNan, std::numeric_limits<double>::infinity()}) {
        EXPECT_NE(doubtWith(&Trust::residual, bad).find("equations"), std::string::npos);
        EXPECT_NE(doubtWith(&Trust::imbalance, bad).find("balance"), std::string::npos);
        EXPECT_NE(doubtWith(&Trust::held, bad).find("balance"), std::string::npos);
        EXPECT_NE(doubtWith(&Trust::tipping, bad).find("turn"), std::string::npos);
    }
    Trust trust = sound();
    for (double bad : {5.1, kNan}) {
        trust.meshPercent = bad;
        EXPECT_NE(doubtOf(trust).value_or("").find("two meshes"), std::string::npos);
    }
    trust.meshPercent = std::nullopt;
    EXPECT_NE(doubtOf(trust).value_or("").find("second mesh"), std::string::npos);
}
