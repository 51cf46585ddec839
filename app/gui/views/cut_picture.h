#pragma once

#include "core/units/format.h"
#include "core/util/result.h"
#include "geometry/exchange/cut_path.h"

#include <QString>
#include <vector>

/// The torch's path as it is drawn: plain lines and marks in plate mm, without painting.
namespace pw::gui {

struct CutPicture {
    enum class Kind { Cut, Lead, Travel };
    /// Sides one after the other. Travel is straight, from where the torch goes off to the next pierce.
    struct Line {
        Kind kind = Kind::Cut;
        std::vector<shape::Side> sides;
    };
    struct Arrow {
        shape::Point at, way; ///< way: unit, as the torch goes
    };
    struct Pierce {
        shape::Point at;
        int order = 1; ///< as they are burned
    };
    struct Drill {
        shape::Point at;
        double diameter = 0;
    };
    std::vector<Line> lines;
    std::vector<Arrow> arrows; ///< on each cut: a quarter and three quarters round
    std::vector<Pierce> pierces;
    std::vector<Drill> drills;
    QString words;   ///< pierces, length, time
    QString trouble; ///< why there is no path; then the rest is empty
};

CutPicture cutPictureOf(const util::Result<exchange::CutPath>& path, units::System system);

/// Place and direction of travel at a share (0 to 1) of the way along a loop.
CutPicture::Arrow arrowAlong(const shape::Loop& loop, double share);

} // namespace pw::gui
