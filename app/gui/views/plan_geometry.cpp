#include "app/gui/views/plan_geometry.h"

#include "core/job/process.h"
#include "core/job/station_places.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <numeric>

namespace pw::gui {

namespace {

constexpr double kDegree = std::numbers::pi / 180.0;

double mmOr(const job::Given<units::Length>& length, double otherwise = 0) {
    return length ? length->mm() : otherwise;
}

std::optional<shape::Loop> rimOf(const job::Outline& outline, PlanShape& shape) {
    shape.outline = outline.shape;
    switch (outline.shape) {
    case job::OutlineShape::Disc:
        shape.rimDiameter = mmOr(outline.diameter);
        if (shape.rimDiameter > 0)
            return shape::circleLoop({}, shape.rimDiameter / 2);
        break;
    case job::OutlineShape::Bar:
    case job::OutlineShape::Rectangle:
        shape.rimLength = mmOr(outline.length);
        shape.rimWidth = mmOr(outline.width);
        if (shape.rimLength <= 0 || shape.rimWidth <= 0)
            break;
        if (outline.shape == job::OutlineShape::Bar)
            return shape::barLoop(shape.rimLength, shape.rimWidth,
                                  outline.roundEnds && shape.rimLength > shape.rimWidth);
        return shape::rectangleLoop(
            shape.rimLength, shape.rimWidth,
            std::clamp(mmOr(outline.corner), 0.0, std::min(shape.rimLength, shape.rimWidth) / 2 * 0.999));
    case job::OutlineShape::Polygon:
        shape.corners = outline.points;
        if (outline.points.size() >= 3)
            return shape::Loop{outline.points};
        break;
    }
    return {};
}

double angleOf(shape::Point p) {
    return std::atan2(p.y, p.x);
}

void grow(shape::Box& box, shape::Point p) {
    box.low = {std::min(box.low.x, p.x), std::min(box.low.y, p.y)};
    box.high = {std::max(box.high.x, p.x), std::max(box.high.y, p.y)};
}

} // namespace

void PlanTransform::zoom(QPointF at, double factor) {
    const shape::Point fixed = toPlate(at);
    scale = std::clamp(scale * factor, kLeastScale, kMostScale);
    origin = at - QPointF(fixed.x * scale, -fixed.y * scale);
}

PlanTransform PlanTransform::fit(const shape::Box& box, const QRectF& view) {
    PlanTransform t;
    const double w = std::max(box.width(), 1e-3), h = std::max(box.height(), 1e-3);
    t.scale = std::clamp(std::min(view.width() / w, view.height() / h), kLeastScale, kMostScale);
    const shape::Point middle{(box.low.x + box.high.x) / 2, (box.low.y + box.high.y) / 2};
    t.origin = view.center() - QPointF(middle.x * t.scale, -middle.y * t.scale);
    return t;
}

std::optional<shape::Loop> PlanShape::accessLoop(std::size_t i) const {
    if (i >= stations.size())
        return {};
    const shape::Point c = stations[i];
    const double ray = angleOf(c);
    const double length = mmOr(hole.length, access), width = mmOr(hole.width, access);
    switch (hole.shape) {
    case job::HoleShape::Round:
        break;
    case job::HoleShape::Slot:
        if (length > 0 && width > 0 && length >= width)
            return shape::slotLoop(c, length, width, ray + (hole.turn ? hole.turn->radian() : 0));
        break;
    case job::HoleShape::Open: {
        if (width <= 0)
            break;
        // As far out as the plate can reach; what sticks out of the rim is cut off when it is drawn.
        const double reach = 2 * (rimDiameter + rimLength + rimWidth) + 200;
        const shape::Point out = shape::polar(reach / 2, ray);
        return shape::slotLoop(c + out, reach + width, width, ray);
    }
    }
    if (access <= 0)
        return {};
    return shape::circleLoop(c, access / 2);
}

shape::Box PlanShape::plateBounds() const {
    if (rim)
        return shape::bounds(*rim);
    shape::Box box{{-80, -80}, {80, 80}};
    const double ring = circle / 2 + std::max(land, access) / 2;
    if (ring > 0)
        box = {{-ring, -ring}, {ring, ring}};
    for (const auto& s : stations)
        grow(box, s);
    return box;
}

shape::Box PlanShape::bounds() const {
    shape::Box box = plateBounds();
    if (piece) {
        const shape::Box under = shape::bounds(piece->rim);
        grow(box, under.low);
        grow(box, under.high);
    }
    if (!rim)
        return box;
    // What stands in the way belongs into the picture when it is close by.
    const shape::Box plate = plateBounds();
    const double near = std::max(plate.width(), plate.height()) / 2;
    for (const auto& obstacle : keepClear) {
        const shape::Point c = obstacle.circle.centre;
        const double r = obstacle.circle.radius;
        if (shape::distanceTo(*rim, c) > near)
            continue;
        grow(box, c - shape::Point{r, r});
        grow(box, c + shape::Point{r, r});
    }
    return box;
}

namespace {

/// Drilled because it is too small to burn, because nothing is burned, or because somebody said so.
bool isDrilled(const job::ExtraHole& hole, const job::Job& job) {
    if (hole.drilled || !hole.diameter || hole.form.shape != job::HoleShape::Round)
        return hole.drilled;
    const auto process = job.cutting.process.value_or(job::Process::PlasmaTable);
    const auto least = job::leastBurnedHole(process, job.plate.thickness.value_or(units::Length::fromMm(0)));
    return !least || *hole.diameter < *least;
}

} // namespace

PlanShape planShape(const job::Job& job, std::optional<double> boreOfThread) {
    PlanShape shape;
    if (job.plate.outline)
        shape.rim = rimOf(*job.plate.outline, shape);
    shape.bore = mmOr(job.plate.bore, boreOfThread.value_or(0));
    const job::Stations& s = job.stations;
    shape.circle = s.at.empty() ? mmOr(s.circle) : 0;
    shape.onCircle = s.at.empty();
    shape.start = s.start ? s.start->radian() : 0;
    shape.access = mmOr(s.accessHole);
    shape.land = mmOr(s.land, mmOr(s.retainer));
    shape.keeper = mmOr(s.keeper);
    shape.pin = mmOr(s.pin);
    shape.hole = s.hole;
    shape.bearing = mmOr(job.centre.bearingOutside, job.screw ? mmOr(job.screw->washerOutside) : 0);
    shape.stations = job::stationCentres(s);
    if (std::ranges::find(s.loaded, false) != s.loaded.end())
        for (std::size_t i = 0; i < shape.stations.size(); ++i)
            shape.idle.push_back(i < s.loaded.size() && !s.loaded[i]);
    for (std::size_t row = 0; row < job.plate.holes.size(); ++row) {
        const auto& extra = job.plate.holes[row];
        const shape::Point at{extra.at.x.mm(), extra.at.y.mm()};
        const double d = mmOr(extra.diameter);
        if (extra.form.shape == job::HoleShape::Round && d > 0)
            shape.extra.push_back({shape::circleLoop(at, d / 2), row, at, d, isDrilled(extra, job)});
        else if (extra.form.length && extra.form.width && *extra.form.length >= *extra.form.width)
            shape.extra.push_back({shape::slotLoop(at, extra.form.length->mm(), extra.form.width->mm(),
                                                   extra.form.turn ? extra.form.turn->radian() : 0),
                                   row, at, 0, false});
    }
    for (const auto& obstacle : job.keepClear)
        shape.keepClear.push_back(
            {{{obstacle.at.x.mm(), obstacle.at.y.mm()}, obstacle.diameter.mm() / 2}, obstacle.note});
    return shape;
}

double scaleBarMm(double scale, double most, units::System system) {
    const double unit = system == units::System::Inch ? units::kMmPerInch : 1.0;
    const double room = most / scale / unit;
    const double decade = std::pow(10.0, std::floor(std::log10(std::max(room, 1e-9))));
    double best = decade;
    for (const double step : {2.0, 5.0})
        if (step * decade <= room)
            best = step * decade;
    return best * unit;
}

double clearRay(const std::vector<shape::Point>& stations, double around) {
    double best = around, widest = -1;
    for (int i = -12; i <= 12; ++i) {
        const double angle = around + i * 5 * kDegree;
        double clear = std::numbers::pi;
        for (const auto& s : stations)
            clear = std::min(clear, std::abs(std::remainder(angleOf(s) - angle, 2 * std::numbers::pi)));
        // Of equals the one nearest to where it was wanted.
        const double score = clear - 1e-3 * std::abs(i);
        if (score > widest) {
            widest = score;
            best = angle;
        }
    }
    return best;
}

double circleRay(const PlanShape& shape, double around) {
    const double r = shape.circle / 2, hole = std::max(shape.access, 1.0) / 2;
    double best = around, least = 1e9;
    for (int i = 0; i < 144; ++i) {
        const double angle = around + i * 2.5 * kDegree;
        const shape::Point p = shape::polar(r, angle);
        if (shape.rim && !shape::contains(*shape.rim, p))
            continue;
        double clear = 1e9;
        for (const auto& s : shape.stations)
            clear = std::min(clear, shape::distance(p, s) - hole);
        // Half a hole of room is enough; beyond it nearness counts.
        const double turn = std::abs(std::remainder(angle - around, 2 * std::numbers::pi));
        const double score = turn + (clear < hole ? 10 * (1 - clear / hole) : 0);
        if (score < least) {
            least = score;
            best = angle;
        }
    }
    return best;
}

std::vector<double> spread(const std::vector<double>& places, double height, double top, double bottom) {
    std::vector<std::size_t> order(places.size());
    std::iota(order.begin(), order.end(), std::size_t(0));
    std::ranges::stable_sort(order, {}, [&](std::size_t i) { return places[i]; });
    std::vector<double> out = places;
    double least = top + height / 2;
    for (const auto i : order) {
        out[i] = std::max(places[i], least);
        least = out[i] + height;
    }
    double most = bottom - height / 2;
    for (auto it = order.rbegin(); it != order.rend(); ++it) {
        out[*it] = std::min(out[*it], most);
        most = out[*it] - height;
    }
    return out;
}

} // namespace pw::gui
