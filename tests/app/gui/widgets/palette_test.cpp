#include "app/gui/widgets/palette.h"

#include "app/gui/widgets/colour.h"

#include <gtest/gtest.h>

// The contrasts that the look promises (its sections 3 and 4), by WCAG 2 relative luminance, on the worst
// ground a colour is used on. They are printed there with one decimal; kPrinted is half of that.

namespace pw::gui {
namespace {

constexpr double kPrinted = 0.051;

/// Least contrast of a colour on any of the grounds.
double least(const QColor& colour, std::initializer_list<QColor> grounds) {
    double worst = 21;
    for (const auto& ground : grounds)
        worst = std::min(worst, contrast(colour, ground));
    return worst;
}

TEST(Contrast, of_black_on_white_is_21_and_of_a_colour_on_itself_1) {
    // WCAG 2.1, definition of contrast ratio: from 1 to 21.
    EXPECT_NEAR(contrast("#000000", "#FFFFFF"), 21.0, 1e-9);
    EXPECT_NEAR(contrast("#2A4A97", "#2A4A97"), 1.0, 1e-9);
}

TEST(Lab, of_white_and_mid_grey_are_where_CIE_puts_them) {
    // CIE 1976: white is L* 100; sRGB #777777 is L* 50.0 (linear 0.1845 against 0.1842 by definition of L*
    // 50).
    EXPECT_NEAR(toLab("#FFFFFF").L, 100.0, 0.01);
    EXPECT_NEAR(toLab("#777777").L, 50.0, 0.2);
    EXPECT_NEAR(toLab("#777777").a, 0.0, 0.05);
}

TEST(Lab, comes_back_as_the_colour_it_was_made_from) {
    for (const char* name : {"#D6E1E8", "#692420", "#5CCFBE", "#14181A"})
        EXPECT_EQ(fromLab(toLab(QColor(name))).name(), QColor(name).name());
}

TEST(Palette, ink_and_muted_read_on_every_ground) {
    const Palette& light = paletteFor(Tone::Light);
    const Palette& dark = paletteFor(Tone::Dark);
    EXPECT_NEAR(least(light.ink, {light.ground, light.panel, light.field}), 12.8, kPrinted);
    EXPECT_NEAR(least(dark.ink, {dark.ground, dark.panel, dark.field}), 11.2, kPrinted);
    EXPECT_NEAR(least(light.muted, {light.ground, light.panel, light.field}), 5.6, kPrinted);
    EXPECT_NEAR(least(dark.muted, {dark.ground, dark.panel, dark.field}), 6.2, kPrinted);
}

TEST(Palette, box_edges_and_scrap_edges_can_be_seen) {
    const Palette& light = paletteFor(Tone::Light);
    const Palette& dark = paletteFor(Tone::Dark);
    EXPECT_NEAR(contrast(light.strongRule, light.panel), 3.3, kPrinted);
    EXPECT_NEAR(contrast(dark.strongRule, dark.panel), 3.5, kPrinted);
    EXPECT_NEAR(contrast(light.steelEdge, light.steel), 8.3, kPrinted);
    EXPECT_NEAR(contrast(dark.steelEdge, dark.steel), 5.4, kPrinted);
    EXPECT_NEAR(contrast(light.scrapEdge, light.ground), 3.2, kPrinted);
    EXPECT_NEAR(contrast(dark.scrapEdge, dark.ground), 3.7, kPrinted);
}

TEST(Palette, touch_reads_as_text_and_carries_text) {
    const Palette& light = paletteFor(Tone::Light);
    const Palette& dark = paletteFor(Tone::Dark);
    EXPECT_GE(least(light.touch, {light.ground, light.panel, light.field}), 6.6);
    EXPECT_GE(least(dark.touch, {dark.ground, dark.panel, dark.field}), 6.6);
    EXPECT_NEAR(contrast(light.onTouch, light.touch), 8.3, kPrinted);
    EXPECT_NEAR(contrast(dark.onTouch, dark.touch), 8.7, kPrinted);
    EXPECT_NEAR(contrast(light.ink, light.touchSoft), 12.5, kPrinted);
    EXPECT_NEAR(contrast(dark.ink, dark.touchSoft), 9.7, kPrinted);
}

struct Promise {
    verdict::Grade grade;
    Tone tone;
    double onFill, textOnPanel;
};

class VerdictContrast : public testing::TestWithParam<Promise> {};

TEST_P(VerdictContrast, is_what_the_look_promises) {
    const auto& p = GetParam();
    const Palette& palette = paletteFor(p.tone);
    const VerdictColours& v = palette.of(p.grade);
    EXPECT_NEAR(contrast(v.onFill, v.fill), p.onFill, kPrinted);
    EXPECT_NEAR(contrast(v.text, palette.panel), p.textOnPanel, kPrinted);
}

using verdict::Grade;
INSTANTIATE_TEST_SUITE_P(
    Every, VerdictContrast,
    testing::Values(Promise{Grade::Holds, Tone::Light, 6.9, 6.2}, Promise{Grade::Holds, Tone::Dark, 9.0, 8.5},
                    Promise{Grade::Thin, Tone::Light, 8.9, 6.4}, Promise{Grade::Thin, Tone::Dark, 11.1, 10.5},
                    Promise{Grade::Sets, Tone::Light, 4.9, 5.6}, Promise{Grade::Sets, Tone::Dark, 6.0, 7.7},
                    Promise{Grade::Breaks, Tone::Light, 13.7, 12.3},
                    Promise{Grade::Breaks, Tone::Dark, 5.1, 7.1},
                    Promise{Grade::Incomplete, Tone::Light, 6.3, 6.3},
                    Promise{Grade::Incomplete, Tone::Dark, 7.9, 7.9}));

} // namespace
} // namespace pw::gui
