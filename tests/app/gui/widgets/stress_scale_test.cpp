#include "app/gui/widgets/stress_scale.h"

#include "app/gui/widgets/colour.h"

#include <cmath>
#include <gtest/gtest.h>

// The promises of the look, section 5: L* strictly monotone, steps equal, and both still true enough for weak
// red and weak green. Those are simulated after Vienot, Brettel, Mollon, Digital video colourmaps for
// checking the legibility of displays by dichromats, Color Res. Appl. 24 (1999) 243-252 (its two 3x3
// matrices, eq. 4 and 5).

namespace pw::gui {
namespace {

enum class Eye { Full, WeakRed, WeakGreen };

QColor seenBy(Eye eye, const QColor& colour) {
    if (eye == Eye::Full)
        return colour;
    const double r = linearChannel(colour.redF()), g = linearChannel(colour.greenF()),
                 b = linearChannel(colour.blueF());
    // Without the paper's narrowing of the gamut (1 and 4 %), which the look's own figures leave out as well.
    double l = 17.8824 * r + 43.5161 * g + 4.11935 * b;
    double m = 3.45565 * r + 27.1554 * g + 3.86714 * b;
    const double s = 0.0299566 * r + 0.184309 * g + 1.46709 * b;
    if (eye == Eye::WeakRed)
        l = 2.02344 * m - 2.52581 * s;
    else
        m = 0.494207 * l + 1.24827 * s;
    const auto channel = [](double v) { return static_cast<float>(srgbChannel(v)); };
    return QColor::fromRgbF(channel(0.0809444479 * l - 0.130504409 * m + 0.116721066 * s),
                            channel(-0.0102485335 * l + 0.0540193266 * m - 0.113614708 * s),
                            channel(-0.000365296938 * l - 0.00412161469 * m + 0.693511405 * s));
}

class StressScale : public testing::TestWithParam<std::tuple<Tone, Eye>> {};

TEST_P(StressScale, gets_steadily_darker_or_steadily_brighter) {
    const auto [tone, eye] = GetParam();
    // Light runs pale to dark, dark runs dark to bright.
    const double sign = tone == Tone::Light ? -1 : 1;
    double last = toLab(seenBy(eye, scaleColour(tone, 0))).L;
    constexpr int kSamples = 60;
    for (int i = 1; i <= kSamples; ++i) {
        const double here = toLab(seenBy(eye, scaleColour(tone, static_cast<double>(i) / kSamples))).L;
        EXPECT_GT(sign * (here - last), 0) << "at " << i << " of " << kSamples;
        last = here;
    }
}

TEST_P(StressScale, keeps_neighbouring_stops_at_least_7_apart) {
    const auto [tone, eye] = GetParam();
    const auto& stops = scaleStops(tone);
    for (std::size_t i = 1; i < stops.size(); ++i)
        EXPECT_GE(colourDistance(toLab(seenBy(eye, stops[i])), toLab(seenBy(eye, stops[i - 1]))), 7 - 0.05)
            << i; // printed whole
}

INSTANTIATE_TEST_SUITE_P(EveryEye, StressScale,
                         testing::Combine(testing::Values(Tone::Light, Tone::Dark),
                                          testing::Values(Eye::Full, Eye::WeakRed, Eye::WeakGreen)));

TEST(StressScaleStops, have_the_lightness_that_the_look_prints) {
    const double light[] = {89, 77, 67, 59, 53, 41, 25}, dark[] = {29, 42, 52, 60, 67, 78, 92};
    for (std::size_t i = 0; i < 7;
         ++i) { // printed without decimals, from stops before they were rounded to 8 bits
        EXPECT_NEAR(toLab(scaleStops(Tone::Light)[i]).L, light[i], 1.0) << i;
        EXPECT_NEAR(toLab(scaleStops(Tone::Dark)[i]).L, dark[i], 1.0) << i;
    }
}

TEST(StressScaleStops, are_equal_steps_to_the_eye) {
    for (const Tone tone : {Tone::Light, Tone::Dark}) {
        double least = 1e9, most = 0;
        for (std::size_t i = 1; i < 7; ++i) {
            const double step = colourDistance(toLab(scaleStops(tone)[i]), toLab(scaleStops(tone)[i - 1]));
            least = std::min(least, step);
            most = std::max(most, step);
        }
        // The stops are rounded to 8 bits and chords over smoothed corners are shorter than the curve: an
        // eighth.
        EXPECT_LT(most / least, 1.125) << (tone == Tone::Light ? "light" : "dark");
    }
}

TEST(ScaleTop, is_the_next_round_figure_and_its_quarters_are_round) {
    EXPECT_DOUBLE_EQ(scaleTop(380), 400);
    EXPECT_DOUBLE_EQ(scaleTop(400), 400);
    EXPECT_DOUBLE_EQ(scaleTop(401), 600);
    EXPECT_DOUBLE_EQ(scaleTop(0.021), 0.024);
    EXPECT_DOUBLE_EQ(scaleTop(9.2), 10);
    EXPECT_DOUBLE_EQ(scaleTop(0), 1);
    EXPECT_DOUBLE_EQ(scaleTop(std::nan("")), 1);
}

} // namespace
} // namespace pw::gui
