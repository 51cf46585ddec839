#include "core/units/format.h"
#include "core/util/say.h"
#include "geometry/outline/build.h"

#include <algorithm>
#include <cmath>

namespace pw::outline {

using units::Length;

namespace {

std::string text(Length value) {
    return units::show(value, units::System::Metric);
}

/// The figures of one outline, gathered with what is wrong with them.
class Figures {
public:
    Figures(const std::string& field, util::Problems& problems, std::vector<std::string>& missing)
        : m_field(field), m_problems(problems), m_missing(missing) {}

    double need(const job::Given<Length>& value, const char* key) {
        if (!value) {
            m_missing.push_back(m_field + "." + key);
            m_sound = false;
            return 0;
        }
        if (!(value->mm() > 0) || !std::isfinite(value->mm()))
            wrong(key, say("must be more than 0, like 140 mm or 5 1/2 in"));
        return value->mm();
    }

    void wrong(const std::string& key, const std::string& message) {
        m_problems.push_back({m_field + "." + key, message});
        m_sound = false;
    }

    void lacks(const char* key) {
        m_missing.push_back(m_field + "." + key);
        m_sound = false;
    }

    bool sound() const { return m_sound; }

private:
    const std::string& m_field;
    util::Problems& m_problems;
    std::vector<std::string>& m_missing;
    bool m_sound = true;
};

/// Corners so close, mm, are one corner written twice.
constexpr double kSamePoint = 1e-3;

void checkPolygon(const std::vector<shape::Vertex>& points, Figures& figures) {
    if (points.size() < 2 || (points.size() == 2 && points[0].bulge == 0 && points[1].bulge == 0)) {
        figures.wrong("points", say("an outline needs at least three corners"));
        return;
    }
    for (std::size_t i = 0; i < points.size(); ++i) {
        const shape::Vertex& a = points[i];
        if (!std::isfinite(a.at.x) || !std::isfinite(a.at.y) || !std::isfinite(a.bulge))
            figures.wrong("points", say("corner %1 is not a number", {i + 1}));
        else if (shape::distance(a.at, points[(i + 1) % points.size()].at) < kSamePoint)
            figures.wrong(
                "points",
                say("corner %1 and the next one are the same point; leave one of them out", {i + 1}));
    }
    if (!figures.sound())
        return;
    const shape::Loop loop{points};
    const shape::Box box = shape::bounds(loop);
    if (shape::crossesItself(loop))
        figures.wrong("points", say("the outline crosses itself; list the corners in order round the plate"));
    else if (std::abs(shape::signedArea(loop)) <=
             1e-9 * (box.width() + box.height()) * (box.width() + box.height()))
        figures.wrong("points", say("the outline has no area; its corners lie on one line"));
}

} // namespace

std::optional<shape::Loop> buildOutline(const job::Outline& outline, const std::string& field,
                                        util::Problems& problems, std::vector<std::string>& missing) {
    Figures figures(field, problems, missing);
    switch (outline.shape) {
    case job::OutlineShape::Disc: {
        const double diameter = figures.need(outline.diameter, "diameter");
        if (!figures.sound())
            return std::nullopt;
        return shape::circleLoop({}, diameter / 2);
    }
    case job::OutlineShape::Bar: {
        const double length = figures.need(outline.length, "length"),
                     width = figures.need(outline.width, "width");
        if (figures.sound() && outline.roundEnds && length < width)
            figures.wrong("length", say("%1 is less than the width of %2; with round ends a bar is at least "
                                        "as long as it is wide",
                                        {text(*outline.length), text(*outline.width)}));
        if (!figures.sound())
            return std::nullopt;
        return shape::barLoop(length, width, outline.roundEnds);
    }
    case job::OutlineShape::Rectangle: {
        const double length = figures.need(outline.length, "length"),
                     width = figures.need(outline.width, "width");
        const double corner = outline.corner ? outline.corner->mm() : 0;
        if (figures.sound() && !(corner >= 0 && corner <= std::min(length, width) / 2 * (1 + 1e-12)))
            figures.wrong("corner",
                          say("%1 must be between 0 and half the shorter side, %2",
                              {text(*outline.corner), text(Length::fromMm(std::min(length, width) / 2))}));
        if (!figures.sound())
            return std::nullopt;
        return shape::rectangleLoop(length, width, corner);
    }
    case job::OutlineShape::Polygon:
        break;
    }
    if (outline.points.empty())
        figures.lacks("points");
    else
        checkPolygon(outline.points, figures);
    if (!figures.sound())
        return std::nullopt;
    const shape::Loop loop{outline.points};
    return shape::signedArea(loop) < 0 ? shape::reversed(loop) : loop;
}

} // namespace pw::outline
