#pragma once

#include "core/job/job.h"

#include <cmath>
#include <fuzzer/FuzzedDataProvider.h>
#include <numbers>

/// Bytes to plates and pieces: every figure within what a job file may hold, no matter how foolish together.
namespace pw::fuzz {

class PlateBytes {
public:
    explicit PlateBytes(FuzzedDataProvider& bytes) : m_bytes(bytes) {}

    /// Round figures most of the time, so that things touch, coincide and lie on one line.
    double between(double low, double high) {
        const auto step = m_bytes.ConsumeIntegralInRange<int>(0, 200);
        if (m_bytes.ConsumeIntegralInRange<int>(0, 7) != 0)
            return low + (high - low) * step / 200;
        return low + (high - low) * m_bytes.ConsumeProbability<double>();
    }
    units::Length mm(double low, double high) { return units::Length::fromMm(between(low, high)); }
    int pick(int count) { return m_bytes.ConsumeIntegralInRange<int>(0, count - 1); }

    job::Outline outline() {
        job::Outline outline;
        outline.shape = static_cast<job::OutlineShape>(pick(4));
        switch (outline.shape) {
        case job::OutlineShape::Disc:
            outline.diameter = mm(20, 220);
            break;
        case job::OutlineShape::Bar:
            outline.length = mm(20, 300);
            outline.width = mm(5, 120);
            outline.roundEnds = pick(2);
            break;
        case job::OutlineShape::Rectangle:
            outline.length = mm(20, 300);
            outline.width = mm(20, 200);
            if (pick(2))
                outline.corner = mm(0, 30);
            break;
        case job::OutlineShape::Polygon: {
            const int corners = 2 + pick(10);
            const bool star = pick(4) != 0; // else anything at all, crossing itself as it may
            for (int i = 0; i < corners; ++i) {
                const double bulge = pick(3) == 0 ? between(-1.5, 1.5) : 0;
                if (star)
                    outline.points.push_back(
                        {shape::polar(between(20, 120), 2 * std::numbers::pi * i / corners), bulge});
                else
                    outline.points.push_back({{between(-100, 100), between(-100, 100)}, bulge});
            }
            break;
        }
        }
        return outline;
    }

    job::HoleForm form() {
        job::HoleForm form;
        form.shape = static_cast<job::HoleShape>(pick(3));
        if (form.shape != job::HoleShape::Round) {
            form.width = mm(2, 30);
            if (form.shape == job::HoleShape::Slot)
                form.length = mm(2, 60);
            if (pick(2))
                form.turn = units::Angle::fromDegree(between(-180, 180));
        }
        return form;
    }

    job::ExtraHole hole() {
        job::ExtraHole hole;
        hole.at = {mm(-100, 100), mm(-100, 100)};
        hole.form = form();
        hole.diameter = mm(1, 40);
        return hole;
    }

    /// Everything that decides the shape of a plate.
    job::Job plate() {
        job::Job job;
        job.plate.outline = outline();
        job.plate.thickness = mm(2, 30);
        job.plate.bore = mm(0, 60);
        if (pick(4) == 0) {
            const int count = 1 + pick(6);
            for (int i = 0; i < count; ++i)
                job.stations.at.push_back({mm(-90, 90), mm(-90, 90)});
        } else {
            job.stations.count = 1 + pick(8);
            job.stations.circle = mm(10, 180);
            if (pick(2))
                job.stations.start = units::Angle::fromDegree(between(-180, 180));
        }
        job.stations.accessHole = mm(2, 40);
        job.stations.hole = form();
        const int holes = pick(5);
        for (int i = 0; i < holes; ++i)
            job.plate.holes.push_back(hole());
        return job;
    }

private:
    FuzzedDataProvider& m_bytes;
};

} // namespace pw::fuzz
