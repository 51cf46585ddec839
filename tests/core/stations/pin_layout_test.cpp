#include "core/stations/pin_layout.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <numbers>
#include <random>

namespace pw::stations {
namespace {

using shape::Point;

// Exact readings: what is left is the rounding of the iteration.
constexpr double kExact = 1e-6;
constexpr double kPin = 12;

std::vector<Point> evenPins(int count, double diameter) {
    std::vector<Point> pins;
    for (int i = 0; i < count; ++i)
        pins.push_back(shape::polar(diameter / 2, 2 * std::numbers::pi * i / count));
    return pins;
}

/// Each pin moved by a known vector of up to `most` mm; fixed seed.
std::vector<Point> unevenPins(int count, double diameter, double most) {
    std::mt19937 chance(20260714);
    std::uniform_real_distribution<double> way(0, 2 * std::numbers::pi), far(0.3 * most, most);
    auto pins = evenPins(count, diameter);
    for (auto& p : pins)
        p = p + shape::polar(far(chance), way(chance));
    return pins;
}

enum Kind { Over = 1, Between = 2 };

std::vector<job::PinReading> readingsOf(const std::vector<Point>& pins, std::initializer_list<PinPairs> which,
                                        int kinds = Over) {
    std::vector<job::PinReading> readings;
    for (const PinPairs pairs : which)
        for (const auto& [a, b] : pinPairs(pairs, static_cast<int>(pins.size()), readings)) {
            const double d =
                shape::distance(pins[static_cast<std::size_t>(a - 1)], pins[static_cast<std::size_t>(b - 1)]);
            job::PinReading reading{a, b, {}, {}};
            if (kinds & Over)
                reading.over = Length::fromMm(d + kPin);
            if (kinds & Between)
                reading.between = Length::fromMm(d - kPin);
            readings.push_back(reading);
        }
    return readings;
}

const std::initializer_list<PinPairs> kAll{PinPairs::Neighbours, PinPairs::Opposite, PinPairs::EverySecond};

/// Largest difference of a distance between two pins: turning and mirroring do not count.
double worstDistance(const std::vector<Point>& a, const std::vector<Point>& b) {
    double worst = 0;
    for (std::size_t i = 0; i < a.size(); ++i)
        for (std::size_t j = 0; j < i; ++j)
            worst = std::max(worst, std::abs(shape::distance(a[i], a[j]) - shape::distance(b[i], b[j])));
    return worst;
}

PinLayout found(const std::vector<job::PinReading>& readings, int count,
                std::optional<Length> pin = Length::fromMm(kPin)) {
    const auto layout = findPinLayout(readings, count, pin);
    EXPECT_TRUE(layout) << (layout ? "" : layout.problem().message);
    return layout ? *layout : PinLayout();
}

TEST(PinLayout, finds_three_to_twelve_uneven_pins_again_from_exact_readings) {
    for (int count = 3; count <= 12; ++count) {
        const auto pins = unevenPins(count, 130, 1.5);
        const auto layout = found(readingsOf(pins, kAll), count);
        ASSERT_EQ(layout.pins.size(), pins.size()) << count;
        EXPECT_EQ(layout.freedom, PinFreedom::Free) << count;
        EXPECT_LT(worstDistance(layout.pins, pins), kExact) << count;
        EXPECT_TRUE(layout.doubtful.empty());
        EXPECT_FALSE(layout.disagree);
        for (const auto& figure : layout.figures)
            EXPECT_NEAR(figure.offMm, 0, kExact);
    }
}

TEST(PinLayout, of_an_even_ring_is_its_circle_and_no_pin_is_off) {
    const auto layout = found(readingsOf(evenPins(8, 130), kAll), 8);
    EXPECT_NEAR(layout.circle.mm(), 130, kExact);
    EXPECT_NEAR(layout.evenCircle.mm(), 130, kExact);
    EXPECT_LT(layout.worstFromEven().mm(), kExact);
    EXPECT_NEAR(layout.pins[0].y, 0, kExact);
    EXPECT_NEAR(layout.pins[0].x, 65, kExact);
}

TEST(PinLayout, names_how_far_one_displaced_pin_is_from_even_division) {
    // A pin pushed out by 1 mm: the nearest even ring follows by an n-th of it in place and an n-th in size,
    // so that 1 - 2/n is left at that pin (c and z of the linear fit).
    auto pins = evenPins(6, 100);
    pins[2] = pins[2] * (51.0 / 50);
    const auto layout = found(readingsOf(pins, kAll), 6);
    EXPECT_NEAR(layout.fromEven[2].mm(), 1 - 2.0 / 6, kExact);
    for (const std::size_t other : {0u, 1u, 3u, 4u, 5u})
        EXPECT_LT(layout.fromEven[other].mm(), layout.fromEven[2].mm());
}

TEST(PinLayout, counts_the_pins_turning_left_whichever_way_the_readings_were_mirrored) {
    auto pins = unevenPins(5, 90, 2);
    const auto straight = found(readingsOf(pins, kAll), 5);
    for (auto& p : pins)
        p.y = -p.y;
    const auto mirrored = found(readingsOf(pins, kAll), 5);
    for (std::size_t i = 0; i < 5; ++i)
        EXPECT_LT(shape::distance(straight.pins[i], mirrored.pins[i]), kExact);
    double turned = 0;
    for (std::size_t i = 0; i < 5; ++i)
        turned += shape::cross(straight.pins[i], straight.pins[(i + 1) % 5]);
    EXPECT_GT(turned, 0);
}

TEST(PinLayout, works_the_pin_out_when_both_kinds_of_readings_are_there) {
    const auto pins = unevenPins(6, 120, 1);
    auto readings = readingsOf(pins, kAll, Over | Between);
    const auto layout = found(readings, 6, std::nullopt);
    EXPECT_TRUE(layout.pinWorkedOut);
    EXPECT_NEAR(layout.pin.mm(), kPin, kExact);
    EXPECT_LT(worstDistance(layout.pins, pins), kExact);
    EXPECT_FALSE(findPinLayout(readingsOf(pins, kAll), 6, std::nullopt));
}

TEST(PinLayout, takes_readings_between_the_pins_alone) {
    const auto pins = unevenPins(7, 120, 1);
    EXPECT_LT(worstDistance(found(readingsOf(pins, kAll, Between), 7).pins, pins), kExact);
}

TEST(PinLayout, knows_that_neighbours_and_opposites_of_six_fix_the_angles_only) {
    // Bolker and Roth 1980: the graph of neighbours and opposites of six is K33, which is not rigid to first
    // order when its six points lie on a conic.
    auto pins = evenPins(6, 100);
    for (std::size_t i = 0; i < 6; ++i)
        pins[i] =
            shape::rotated(pins[i], (i % 2 ? 0.01 : -0.006) * static_cast<double>(i)); // still on the circle
    const auto layout = found(readingsOf(pins, {PinPairs::Neighbours, PinPairs::Opposite}), 6);
    EXPECT_EQ(layout.freedom, PinFreedom::OnCircle);
    EXPECT_LT(worstDistance(layout.pins, pins), kExact);
    EXPECT_NEAR(layout.circle.mm(), 100, kExact);
    EXPECT_EQ(layout.spare, 3);
}

TEST(PinLayout, of_one_reading_is_a_circle_that_is_taken_for_even) {
    const auto pins = evenPins(6, 100);
    const auto readings = readingsOf(pins, {PinPairs::Opposite});
    const auto layout = found({readings.front()}, 6);
    EXPECT_EQ(layout.freedom, PinFreedom::EvenCircle);
    EXPECT_NEAR(layout.circle.mm(), 100, kExact);
    EXPECT_EQ(layout.spare, 0);
}

TEST(PinLayout, stays_within_what_the_readings_errors_can_do) {
    std::mt19937 chance(7);
    std::normal_distribution<double> error(0, 0.05);
    for (int count = 3; count <= 12; ++count) {
        const auto pins = unevenPins(count, 130, 1.5);
        auto readings = readingsOf(pins, kAll);
        double squares = 0;
        for (auto& reading : readings) {
            const double e = error(chance);
            squares += e * e;
            reading.over = Length::fromMm(reading.over->mm() + e);
        }
        const auto layout = found(readings, count);
        EXPECT_TRUE(layout.doubtful.empty()) << count;
        // |dx| <= |J+| |e| in the pins' places together; two pins make a distance.
        EXPECT_LE(worstDistance(layout.pins, pins),
                  std::numbers::sqrt2 * layout.magnified * std::sqrt(squares) * 1.01)
            << count;
    }
}

TEST(PinLayout, names_the_one_mistyped_reading_and_by_how_much) {
    std::mt19937 chance(11);
    std::normal_distribution<double> error(0, 0.03);
    for (const int count : {5, 6, 8, 12}) {
        const auto pins = unevenPins(count, 130, 1);
        const auto exact = readingsOf(pins, kAll);
        for (std::size_t wrong = 0; wrong < exact.size(); ++wrong) {
            auto readings = exact;
            for (auto& reading : readings)
                reading.over = Length::fromMm(reading.over->mm() + error(chance));
            readings[wrong].over = Length::fromMm(exact[wrong].over->mm() + 2.5);
            const auto layout = found(readings, count);
            // Never the wrong one, though it may say that it cannot tell.
            EXPECT_TRUE(std::ranges::find(layout.doubtful, wrong) != layout.doubtful.end())
                << count << " pins, reading " << wrong;
            if (layout.doubtful.size() == 1) {
                EXPECT_NEAR(layout.doubtfulByMm, 2.5, 0.5) << count << " pins, reading " << wrong;
                EXPECT_TRUE(layout.figures[wrong].leftOut);
            }
        }
    }
}

TEST(PinLayout, finds_a_slip_of_ten_millimetres_or_two_figures_changed_round) {
    const auto pins = unevenPins(6, 100, 0.5);
    const auto exact = readingsOf(pins, kAll);
    for (const double slip : {10.0, -9.0, 27.0}) {
        auto readings = exact;
        readings[4].over = Length::fromMm(exact[4].over->mm() + slip);
        const auto layout = found(readings, 6);
        ASSERT_EQ(layout.doubtful, (std::vector<std::size_t>{4})) << slip;
        EXPECT_NEAR(layout.doubtfulByMm, slip, kExact);
        EXPECT_LT(worstDistance(layout.pins, pins), kExact);
        EXPECT_FALSE(layout.doubtfulIsOtherWay);
    }
}

TEST(PinLayout, sees_that_a_reading_over_was_taken_between) {
    const auto pins = unevenPins(6, 100, 0.5);
    auto readings = readingsOf(pins, kAll);
    readings[1].over = Length::fromMm(readings[1].over->mm() - 2 * kPin);
    const auto layout = found(readings, 6);
    ASSERT_EQ(layout.doubtful, (std::vector<std::size_t>{1}));
    EXPECT_TRUE(layout.doubtfulIsOtherWay);
}

TEST(PinLayout, says_that_it_cannot_tell_which_of_four_pins_readings_is_wrong) {
    // Four neighbours and two opposites have one figure to spare: any of the six could be the one.
    const auto pins = evenPins(4, 100);
    auto readings = readingsOf(pins, kAll);
    ASSERT_EQ(readings.size(), 6u);
    readings[2].over = Length::fromMm(readings[2].over->mm() + 3);
    const auto layout = found(readings, 4);
    EXPECT_EQ(layout.spare, 1);
    EXPECT_GT(layout.doubtful.size(), 1u);
    EXPECT_TRUE(std::ranges::find(layout.doubtful, 2u) != layout.doubtful.end());
    for (const auto& figure : layout.figures)
        EXPECT_FALSE(figure.leftOut);
}

TEST(PinLayout, says_that_they_disagree_when_several_are_wrong) {
    const auto pins = evenPins(8, 130);
    auto readings = readingsOf(pins, kAll);
    readings[0].over = Length::fromMm(readings[0].over->mm() + 3);
    readings[9].over = Length::fromMm(readings[9].over->mm() - 4);
    readings[14].over = Length::fromMm(readings[14].over->mm() + 5);
    const auto layout = found(readings, 8);
    EXPECT_TRUE(layout.disagree);
    EXPECT_GT(layout.scatterMm, 3 * kReadingErrorMm);
}

TEST(PinLayout, refuses_what_cannot_be) {
    const auto pins = evenPins(4, 100);
    const auto readings = readingsOf(pins, kAll);
    const auto pin = Length::fromMm(kPin);
    EXPECT_FALSE(findPinLayout({}, 4, pin));
    EXPECT_FALSE(findPinLayout(readings, 3, pin)); // names pin 4 of 3
    EXPECT_FALSE(findPinLayout(readings, 1, pin));
    EXPECT_FALSE(findPinLayout(readings, 60, pin));
    EXPECT_FALSE(
        findPinLayout({{1, 2, Length::fromMm(10), {}}}, 4, pin)); // less over two pins than one is across
}

TEST(PinPairs, give_each_pair_once) {
    EXPECT_EQ(pinPairs(PinPairs::Neighbours, 3).size(), 3u);
    EXPECT_EQ(pinPairs(PinPairs::Neighbours, 2).size(), 1u);
    EXPECT_EQ(pinPairs(PinPairs::Opposite, 6).size(), 3u);
    EXPECT_EQ(pinPairs(PinPairs::Opposite, 5).size(), 5u);
    EXPECT_EQ(pinPairs(PinPairs::EverySecond, 4).size(), 2u);
    EXPECT_TRUE(
        pinPairs(PinPairs::Opposite, 4, readingsOf(evenPins(4, 100), {PinPairs::EverySecond})).empty());
}

} // namespace
} // namespace pw::stations
