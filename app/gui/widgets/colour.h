#pragma once

#include <QColor>

/// Colour arithmetic that the look is checked and painted by.
namespace pw::gui {

/// CIE 1976 L*a*b*, D65 white. L 0..100.
struct Lab {
    double L = 0, a = 0, b = 0;
};

/// sRGB to linear light, one channel, both 0..1. Source: IEC 61966-2-1.
double linearChannel(double srgb);
double srgbChannel(double linear);

Lab toLab(const QColor& colour);
/// Channels outside sRGB are cut off.
QColor fromLab(const Lab& lab);

/// Distance of two colours, CIE76.
double colourDistance(const Lab& a, const Lab& b);

/// Relative luminance, 0..1. Source: WCAG 2.1, "relative luminance".
double luminance(const QColor& colour);
/// Contrast of two colours, 1..21. Source: WCAG 2.1, "contrast ratio".
double contrast(const QColor& a, const QColor& b);

/// `share` 0: a; 1: b. Mixed in sRGB, as paint over paint.
QColor mixed(const QColor& a, const QColor& b, double share);

} // namespace pw::gui
