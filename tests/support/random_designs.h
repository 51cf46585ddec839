#pragma once

#include "app/engine/plate_field.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <numbers>
#include <random>
#include <string>

/// Sound plates by chance: every shape a job may have, holes clear of one another and inside the rim.
namespace pw::testing {

struct Design {
    engine::PlateTask task;
    std::string words; ///< what it is, for a failure's message
};

class RandomDesigns {
public:
    explicit RandomDesigns(std::uint32_t seed) : m_random(seed) {}

    Design next() {
        for (;;) {
            Design design = attempt();
            if (sound(design.task))
                return design;
        }
    }

    /// Even in [low, high); the same on every system, which the standard's distributions are not.
    double between(double low, double high) { return low + (high - low) * (m_random() / 4294967296.0); }
    int pick(int count) { return static_cast<int>(m_random() % static_cast<std::uint32_t>(count)); }

private:
    static constexpr double kLeastGap = 0.5; ///< mm of steel between two edges

    Design attempt() {
        Design design;
        switch (pick(5)) {
        case 0:
        case 1:
            design = disc();
            break;
        case 2:
            design = bar();
            break;
        case 3:
            design = rectangle();
            break;
        default:
            design = polygon();
        }
        engine::PlateTask& task = design.task;
        task.section = {between(3, 25), between(70000, 210000), between(0.25, 0.35)};
        extras(design);
        design.words += ", t " + std::to_string(task.section.thickness) + ", " +
                        std::to_string(task.stations.size()) + " stations, " +
                        std::to_string(task.region.holes.size()) + " holes";
        return design;
    }

    /// Bore, stations with their holes and lands, centre bearing.
    void fit(engine::PlateTask& task, const std::vector<shape::Point>& places, double room) {
        const double nearest =
            shape::norm(*std::min_element(places.begin(), places.end(), [](shape::Point a, shape::Point b) {
                return shape::norm(a) < shape::norm(b);
            }));
        const double hole = room * between(0.3, 0.7), land = room * between(0.8, 0.95);
        const double bore = between(0.12, 0.3) * nearest;
        const bool bored = pick(8) != 0; // some stations lift on plain lands without a hole
        task.region.holes.push_back({shape::circleLoop({0, 0}, bore), shape::Part::Bore, 0});
        const double uneven = pick(8) == 0 && places.size() < 9 ? 0.3 : 0; // now and then a lopsided load
        const double force = between(500, 5000);
        for (std::size_t i = 0; i < places.size(); ++i) {
            if (bored)
                task.region.holes.push_back(
                    {shape::circleLoop(places[i], hole), shape::Part::Access, static_cast<int>(i)});
            const double share = uneven > 0 ? between(1 - uneven, 1 + uneven) : 1;
            task.stations.push_back({places[i], bored ? hole : 0, land, force * share});
        }
        task.bearing = {{0, 0}, bore, bore + (nearest - room - bore) * between(0.3, 0.9), 0};
    }

    Design disc() {
        const bool off = pick(6) == 0; // now and then the bore and its stations sit off the disc's middle
        const int stations = 2 + pick(pick(off ? 10 : 3) == 0 ? 23 : 7);
        const double circle = between(30, 90), start = pick(2) ? between(0, 6.28) : 0;
        const double pitch = 2 * circle * std::sin(std::numbers::pi / stations);
        const double room = std::min({0.45 * pitch, between(8, 18), 0.4 * circle});
        Design design;
        std::vector<shape::Point> places;
        for (int i = 0; i < stations; ++i)
            places.push_back(shape::polar(circle, start + 2 * std::numbers::pi * i / stations));
        fit(design.task, places, room);
        const shape::Point middle =
            off ? shape::polar(between(0, 0.08 * circle), between(0, 6.28)) : shape::Point{};
        design.task.region.rim =
            shape::circleLoop(middle, circle + room + between(2, 15) + shape::norm(middle));
        design.words = off ? "disc, bore off its middle" : "disc";
        return design;
    }

    Design bar() {
        const double half = between(35, 90), width = between(26, 60);
        Design design;
        const double room = 0.5 * width * between(0.5, 0.85);
        fit(design.task, {{half, 0}, {-half, 0}}, std::min(room, 0.4 * half));
        const bool round = pick(2) == 0;
        design.task.region.rim = shape::barLoop(2 * half + width * between(1.0, 1.3), width, round);
        turn(design.task);
        design.words = round ? "bar with round ends" : "bar with square ends";
        return design;
    }

    Design rectangle() {
        const double x = between(30, 70), y = pick(3) == 0 ? x : between(25, 60), room = between(8, 16);
        Design design;
        fit(design.task, {{x, y}, {-x, y}, {-x, -y}, {x, -y}}, room);
        const double edge = room + between(2, 8);
        design.task.region.rim =
            shape::rectangleLoop(2 * (x + edge), 2 * (y + edge), pick(2) ? between(2, 0.9 * edge) : 0);
        turn(design.task);
        design.words = "rectangle";
        return design;
    }

    /// Corners outside the stations; waists between them on some, which makes inside corners.
    Design polygon() {
        const int stations = 3 + pick(4);
        const double circle = between(35, 70), room = between(8, 14),
                     waist = pick(2) ? between(0.75, 1.0) : 0;
        const double uneven = pick(3) == 0 ? 0.08 : 0;
        Design design;
        std::vector<shape::Point> places;
        for (int i = 0; i < stations; ++i) {
            const double angle = 2 * std::numbers::pi * i / stations, reach = circle + 2 * room;
            places.push_back(shape::polar(circle, angle));
            for (double side : {-0.5, 0.5})
                design.task.region.rim.vertices.push_back({shape::polar(
                    reach * (1 + between(-uneven, uneven)), angle + side * 3.2 * room / reach)});
            if (waist > 0)
                design.task.region.rim.vertices.push_back(
                    {shape::polar(waist * reach * std::cos(std::numbers::pi / stations),
                                  angle + std::numbers::pi / stations)});
        }
        fit(design.task, places, std::min(room, 0.4 * circle));
        design.words = waist > 0 ? "polygon with waists" : "polygon";
        return design;
    }

    /// Bolt holes and slots wherever there is room.
    void extras(Design& design) {
        engine::PlateTask& task = design.task;
        const shape::Box box = shape::bounds(task.region.rim);
        // Rarely in plates with many stations: without symmetry those are large.
        const int wanted = pick(task.stations.size() > 8 ? 8 : 2) == 0 ? 1 + pick(2) : 0;
        int index = 0;
        for (int tries = 0; index < wanted && tries < 30; ++tries) {
            const shape::Point at{between(box.low.x, box.high.x), between(box.low.y, box.high.y)};
            const double width = between(3, 8);
            const bool slot = pick(2) == 0;
            shape::Loop loop = slot ? shape::slotLoop(at, width * between(1.5, 4), width, between(0, 3.1))
                                    : shape::circleLoop(at, width / 2);
            task.region.holes.push_back({std::move(loop), shape::Part::Extra, index});
            const bool onBearing =
                shape::distanceTo(task.region.holes.back().loop, {0, 0}) < task.bearing.outside;
            if (!onBearing && sound(task)) {
                ++index;
                design.words += slot ? ", slot" : ", bolt hole";
            } else {
                task.region.holes.pop_back();
            }
        }
    }

    void turn(engine::PlateTask& task) {
        if (pick(2))
            return;
        const double angle = between(0, 3.1);
        task.region.rim = shape::turned(task.region.rim, angle);
        for (shape::Hole& hole : task.region.holes)
            hole.loop = shape::turned(hole.loop, angle);
        for (plate::PressureRing& ring : task.stations)
            ring.centre = shape::rotated(ring.centre, angle);
    }

    static bool sound(const engine::PlateTask& task) {
        const auto& holes = task.region.holes;
        if (shape::crossesItself(task.region.rim) || shape::signedArea(task.region.rim) <= 0)
            return false;
        for (std::size_t i = 0; i < holes.size(); ++i) {
            if (!shape::contains(task.region.rim, holes[i].loop.vertices[0].at) ||
                shape::clearance(task.region.rim, holes[i].loop) < kLeastGap)
                return false;
            for (std::size_t j = 0; j < i; ++j)
                if (shape::clearance(holes[i].loop, holes[j].loop) < kLeastGap ||
                    shape::contains(holes[i].loop, holes[j].loop.vertices[0].at) ||
                    shape::contains(holes[j].loop, holes[i].loop.vertices[0].at))
                    return false;
        }
        return task.bearing.outside > task.bearing.inside + 1;
    }

    std::mt19937 m_random;
};

} // namespace pw::testing
