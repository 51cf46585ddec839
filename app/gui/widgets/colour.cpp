#include "app/gui/widgets/colour.h"

#include <algorithm>
#include <cmath>

namespace pw::gui {

namespace {

// White point D65 and the sRGB primaries. Source: IEC 61966-2-1.
constexpr double kWhiteX = 0.95047, kWhiteY = 1.0, kWhiteZ = 1.08883;

// Source: CIE 15, L*a*b* with the exact fractions.
constexpr double kEpsilon = 216.0 / 24389.0, kKappa = 24389.0 / 27.0;

double labFunction(double t) {
    return t > kEpsilon ? std::cbrt(t) : (kKappa * t + 16.0) / 116.0;
}

double labInverse(double f) {
    const double cube = f * f * f;
    return cube > kEpsilon ? cube : (116.0 * f - 16.0) / kKappa;
}

} // namespace

double linearChannel(double srgb) {
    return srgb <= 0.04045 ? srgb / 12.92 : std::pow((srgb + 0.055) / 1.055, 2.4);
}

double srgbChannel(double linear) {
    const double c = std::clamp(linear, 0.0, 1.0);
    return c <= 0.0031308 ? 12.92 * c : 1.055 * std::pow(c, 1.0 / 2.4) - 0.055;
}

Lab toLab(const QColor& colour) {
    const double r = linearChannel(colour.redF()), g = linearChannel(colour.greenF()),
                 b = linearChannel(colour.blueF());
    const double x = 0.4124564 * r + 0.3575761 * g + 0.1804375 * b;
    const double y = 0.2126729 * r + 0.7151522 * g + 0.0721750 * b;
    const double z = 0.0193339 * r + 0.1191920 * g + 0.9503041 * b;
    const double fx = labFunction(x / kWhiteX), fy = labFunction(y / kWhiteY), fz = labFunction(z / kWhiteZ);
    return {116.0 * fy - 16.0, 500.0 * (fx - fy), 200.0 * (fy - fz)};
}

QColor fromLab(const Lab& lab) {
    const double fy = (lab.L + 16.0) / 116.0, fx = fy + lab.a / 500.0, fz = fy - lab.b / 200.0;
    const double x = kWhiteX * labInverse(fx), y = kWhiteY * labInverse(fy), z = kWhiteZ * labInverse(fz);
    return QColor::fromRgbF(static_cast<float>(srgbChannel(3.2404542 * x - 1.5371385 * y - 0.4985314 * z)),
                            static_cast<float>(srgbChannel(-0.9692660 * x + 1.8760108 * y + 0.0415560 * z)),
                            static_cast<float>(srgbChannel(0.0556434 * x - 0.2040259 * y + 1.0572252 * z)));
}

double colourDistance(const Lab& a, const Lab& b) {
    return std::hypot(a.L - b.L, a.a - b.a, a.b - b.b);
}

double luminance(const QColor& colour) {
    return 0.2126 * linearChannel(colour.redF()) + 0.7152 * linearChannel(colour.greenF()) +
           0.0722 * linearChannel(colour.blueF());
}

double contrast(const QColor& a, const QColor& b) {
    const auto [low, high] = std::minmax({luminance(a), luminance(b)});
    return (high + 0.05) / (low + 0.05);
}

QColor mixed(const QColor& a, const QColor& b, double share) {
    const auto s = static_cast<float>(std::clamp(share, 0.0, 1.0));
    return QColor::fromRgbF(a.redF() + (b.redF() - a.redF()) * s, a.greenF() + (b.greenF() - a.greenF()) * s,
                            a.blueF() + (b.blueF() - a.blueF()) * s);
}

} // namespace pw::gui
