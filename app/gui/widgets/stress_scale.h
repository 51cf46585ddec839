#pragma once

#include "app/gui/widgets/palette.h"

#include <array>

namespace pw::gui {

inline constexpr int kScaleBands = 8;

/// The seven stops of the scale, from no stress to the worst. Evenly spaced to the eye: every step is the
/// same CIE76 distance and L* is strictly monotone, also for weak red and weak green.
const std::array<QColor, 7>& scaleStops(Tone tone);

/// Colour at `share` 0..1 of the scale, mixed between stops in L*a*b*.
QColor scaleColour(Tone tone, double share);

/// The flat colour of one of the kScaleBands bands.
QColor bandColour(Tone tone, int band);

/// Top of a scale of kScaleBands equal bands: the next round figure over the worst (1, 1.6, 2, 2.4, 3.2, 4, 6
/// or 8 times a power of ten, so that quarters of it are round as well). 1 when the worst is not above zero.
double scaleTop(double worst);

} // namespace pw::gui
