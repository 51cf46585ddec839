#include "geometry/outline/build.h"

#include "core/job/station_places.h"
#include "core/units/format.h"
#include "core/util/say.h"
#include "geometry/outline/hole_checks.h"
#include "geometry/outline/open_slot.h"

#include <algorithm>
#include <cmath>

namespace pw::outline {

using shape::Part;
using shape::Point;
using units::Length;

namespace {

/// As small as any other hole may be, mm. A speck of a bore is smaller than what counts as one point.
constexpr double kLeastBore = 0.1;

/// The figures of one kind of hole, checked once and then placed as often as needed.
struct HoleFigures {
    job::HoleShape shape = job::HoleShape::Round;
    double diameter = 0, length = 0, width = 0, turn = 0;
};

class Builder {
public:
    Builder(const job::Job& job, std::optional<Length> tappedBore) : m_job(job), m_tappedBore(tappedBore) {}

    Built build() {
        addOutline();
        addBore();
        addStations();
        addExtraHoles();
        if (m_haveRim)
            for (util::Problem& p : checkHoles(m_built.region, m_boreField))
                m_built.problems.push_back(std::move(p));
        return std::move(m_built);
    }

private:
    void need(const std::string& path) {
        if (std::find(m_built.missing.begin(), m_built.missing.end(), path) == m_built.missing.end())
            m_built.missing.push_back(path);
    }

    void wrong(const std::string& path, const std::string& message) {
        m_built.problems.push_back({path, message});
    }

    bool positive(Length value, const std::string& path) {
        if (value.mm() > 0 && std::isfinite(value.mm()))
            return true;
        wrong(path, say("must be more than 0, like 20 mm or 3/4 in"));
        return false;
    }

    void addOutline() {
        if (!m_job.plate.outline) {
            need("plate.outline");
            return;
        }
        if (auto rim =
                buildOutline(*m_job.plate.outline, "plate.outline", m_built.problems, m_built.missing)) {
            m_built.region.rim = *std::move(rim);
            m_haveRim = true;
        }
    }

    void addBore() {
        if (!m_job.plate.boreThread.empty())
            m_boreField = "plate.bore_thread";
        const auto bore = m_job.plate.boreThread.empty() ? m_job.plate.bore : m_tappedBore;
        if (!bore)
            need(m_boreField);
        else if (bore->mm() < 0 || !std::isfinite(bore->mm()))
            wrong(m_boreField, say("must be 0 (no bore) or more, like 20 mm or 3/4 in"));
        else if (bore->mm() > 0 && bore->mm() < kLeastBore)
            wrong(m_boreField, say("is too small for a bore; 0 means that there is none"));
        else if (bore->mm() > 0)
            m_built.region.holes.push_back({shape::circleLoop({}, bore->mm() / 2), Part::Bore, 0});
    }

    /// `plain` is the diameter of a round hole, and the width of a slot that gives none of its own.
    std::optional<HoleFigures> figures(const job::HoleForm& form, const job::Given<Length>& plain,
                                       const std::string& plainPath, const std::string& formPath) {
        HoleFigures out;
        out.shape = form.shape;
        out.turn = form.turn ? form.turn->radian() : 0;
        bool sound = true;
        const auto take = [&](const job::Given<Length>& value, const std::string& path, double& into) {
            if (!value) {
                need(path);
                sound = false;
            } else if (positive(*value, path))
                into = value->mm();
            else
                sound = false;
        };
        if (form.shape == job::HoleShape::Round) {
            take(plain, plainPath, out.diameter);
            return sound ? std::optional(out) : std::nullopt;
        }
        if (form.width || !plain)
            take(form.width, formPath + ".width", out.width);
        else
            take(plain, plainPath, out.width);
        if (form.shape == job::HoleShape::Slot)
            take(form.length, formPath + ".length", out.length);
        if (sound && form.shape == job::HoleShape::Slot && out.length < out.width) {
            wrong(formPath + ".length",
                  say("%1 is less than the slot's width of %2; a slot's length goes from end to end",
                      {units::show(*form.length, units::System::Metric),
                       units::show(Length::fromMm(out.width), units::System::Metric)}));
            sound = false;
        }
        return sound ? std::optional(out) : std::nullopt;
    }

    void addHole(const HoleFigures& hole, Point centre, double ray, Part part, int index,
                 const std::string& path) {
        switch (hole.shape) {
        case job::HoleShape::Round:
            m_built.region.holes.push_back({shape::circleLoop(centre, hole.diameter / 2), part, index});
            return;
        case job::HoleShape::Slot:
            m_built.region.holes.push_back(
                {shape::slotLoop(centre, hole.length, hole.width, ray + hole.turn), part, index});
            return;
        case job::HoleShape::Open:
            break;
        }
        if (!m_haveRim)
            return;
        if (auto rim = withOpenSlot(m_built.region.rim, centre, hole.width, ray + hole.turn))
            m_built.region.rim = *std::move(rim);
        else
            wrong(path,
                  say(part == Part::Access ? PW_SAY("the open slot of station %1 does not run out to the rim "
                                                    "in one clean mouth; move it "
                                                    "inside the plate, turn it, or make it narrower")
                                           : PW_SAY("the open slot of extra hole %1 does not run out to the "
                                                    "rim in one clean mouth; move "
                                                    "it inside the plate, turn it, or make it narrower"),
                      {index + 1}));
    }

    void addStations() {
        const job::Stations& stations = m_job.stations;
        const std::vector<Point> centres = job::stationCentres(stations);
        if (stations.at.empty()) {
            if (!stations.count)
                need("stations.count");
            else if (*stations.count < 1)
                wrong("stations.count", say("must be 1 or more"));
            if (!stations.circle)
                need("stations.circle");
            else
                positive(*stations.circle, "stations.circle");
        }
        const auto hole =
            figures(stations.hole, stations.accessHole, "stations.access_hole", "stations.hole");
        if (!hole)
            return;
        for (std::size_t i = 0; i < centres.size(); ++i)
            addHole(*hole, centres[i], std::atan2(centres[i].y, centres[i].x), Part::Access, int(i),
                    stations.at.empty() ? "stations.hole"
                                        : std::string("stations.at[") + std::to_string(i) + "]");
    }

    void addExtraHoles() {
        for (std::size_t i = 0; i < m_job.plate.holes.size(); ++i) {
            const job::ExtraHole& extra = m_job.plate.holes[i];
            const std::string path = std::string("plate.holes[") + std::to_string(i) + "]";
            if (const auto hole = figures(extra.form, extra.diameter, path + ".diameter", path))
                addHole(*hole, {extra.at.x.mm(), extra.at.y.mm()}, 0, Part::Extra, int(i), path);
        }
    }

    const job::Job& m_job;
    std::optional<Length> m_tappedBore;
    std::string m_boreField = "plate.bore";
    bool m_haveRim = false;
    Built m_built;
};

} // namespace

Built buildRegion(const job::Job& job, std::optional<Length> tappedBore) {
    return Builder(job, tappedBore).build();
}

} // namespace pw::outline
