#include "core/units/quantity.h"

#include <gtest/gtest.h>

using namespace pw::units;

namespace {

template<class A, class B>
constexpr bool kAdds = requires(A a, B b) {
    a + b;
};
template<class A, class B>
constexpr bool kCompares = requires(A a, B b) {
    a < b;
};

static_assert(kAdds<Length, Length> && kAdds<Force, Force>);
static_assert(!kAdds<Length, Force> && !kAdds<Torque, Energy> && !kAdds<Length, double>);
static_assert(!kCompares<Length, Force> && !kCompares<Stress, double>);

TEST(Quantity, LengthPlusForceDoesNotCompile) {
    EXPECT_TRUE((kAdds<Length, Length>));
    EXPECT_FALSE((kAdds<Length, Force>));
    EXPECT_FALSE((kCompares<Length, Force>));
}

// Factors: NIST SP 811 (2008), appendix B.8, exact or to the seven figures printed there.
TEST(Quantity, ConversionFactorsAreThoseOfNist) {
    EXPECT_DOUBLE_EQ(Length::fromInch(1).mm(), 25.4);
    EXPECT_NEAR(Force::fromLbf(1).newton(), 4.448222, 5e-7);
    EXPECT_NEAR(Rate::fromLbfPerInch(1).newtonPerMm(), 0.1751268, 5e-8);
    EXPECT_NEAR(Torque::fromFootPound(1).newtonM(), 1.355818, 5e-7);
    EXPECT_NEAR(Stress::fromKsi(1).mpa(), 6.894757, 5e-7);
    EXPECT_NEAR(Mass::fromKg(1).pound() * 0.4535924, 1, 1e-7);
    EXPECT_DOUBLE_EQ(Temperature::fromFahrenheit(212).celsius(), 100);
}

} // namespace
