#include "geometry/placement/search.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <queue>

namespace pw::placement {

namespace {

struct Box {
    Spot middle;
    double halfX = 0, halfY = 0, halfTurn = 0;
    double most = 0; ///< slack that a place in the box can have at most
    bool operator<(const Box& other) const { return most < other.most; }
};

class Search {
public:
    Search(const Slack& slack, const SearchLimits& limits, bool mayTurn)
        : m_slack(slack), m_limits(limits), m_mayTurn(mayTurn) {
        m_result.best.slack = -std::numeric_limits<double>::infinity();
    }

    SearchResult run(double lowX, double highX, double lowY, double highY, double lowTurn, double highTurn) {
        start(lowX, highX, lowY, highY, lowTurn, highTurn);
        std::size_t foundAt = 0;
        while (!m_queue.empty()) {
            if (!m_result.places.empty()) {
                if (foundAt == 0)
                    foundAt = m_result.looks;
                if (m_result.looks > foundAt + m_limits.extraLooks)
                    break;
            }
            if (m_result.looks > m_limits.mostLooks ||
                (m_result.looks % 64 == 0 && m_limits.stop && m_limits.stop())) {
                m_result.settled = !m_result.places.empty();
                break;
            }
            const Box box = m_queue.top();
            m_queue.pop();
            split(box);
        }
        std::ranges::sort(m_result.places, [](const Spot& a, const Spot& b) { return a.slack > b.slack; });
        return std::move(m_result);
    }

private:
    double spread(const Box& box) const { return std::hypot(box.halfX, box.halfY) + spreadOfTurn(box); }
    double spreadOfTurn(const Box& box) const {
        return 2 * m_slack.reach() * std::sin(std::min(box.halfTurn, std::numbers::pi) / 2);
    }

    void start(double lowX, double highX, double lowY, double highY, double lowTurn, double highTurn) {
        const double width = std::max(highX - lowX, 0.0), height = std::max(highY - lowY, 0.0);
        const double side = std::max(std::min(width, height), std::max(width, height) / 16);
        const int columns = side > 0 ? std::max(1, static_cast<int>(std::ceil(width / side))) : 1;
        const int rows = side > 0 ? std::max(1, static_cast<int>(std::ceil(height / side))) : 1;
        // An empty range (lower end above the upper) still has a middle to look at.
        const double startX = highX < lowX ? (lowX + highX) / 2 : lowX,
                     startY = highY < lowY ? (lowY + highY) / 2 : lowY;
        for (int i = 0; i < columns; ++i)
            for (int j = 0; j < rows; ++j) {
                Box box;
                box.halfX = width / columns / 2;
                box.halfY = height / rows / 2;
                box.halfTurn = (highTurn - lowTurn) / 2;
                box.middle.pivot = {startX + (2 * i + 1) * box.halfX, startY + (2 * j + 1) * box.halfY};
                box.middle.turn = (lowTurn + highTurn) / 2;
                look(box);
            }
    }

    void look(Box box) {
        const double spreadHere = spread(box);
        ++m_result.looks;
        box.middle.slack =
            m_slack.at(box.middle.pivot, box.middle.turn, std::min(-spreadHere, m_result.best.slack));
        if (box.middle.slack > m_result.best.slack)
            m_result.best = box.middle;
        if (box.middle.slack >= 0)
            keep(box.middle);
        box.most = box.middle.slack + spreadHere;
        if (box.most < 0)
            return;
        if (spreadHere > m_limits.tolerance) {
            m_queue.push(box);
        } else if (box.middle.slack < 0 && m_eased < kMostEased && box.middle.slack >= m_result.best.slack) {
            // So near that it may just fit: what was looked at is the middle of the box only.
            ++m_eased;
            const Spot spot = eased(m_slack, box.middle, spreadHere, 1e-7, m_mayTurn);
            if (spot.slack > m_result.best.slack)
                m_result.best = spot;
            if (spot.slack >= -kRounding)
                keep(spot);
        }
    }

    void keep(const Spot& spot) {
        const double apart = std::max(m_slack.reach() / 3, 1.0);
        for (Spot& other : m_result.places)
            if (shape::distance(other.pivot, spot.pivot) < apart &&
                m_slack.reach() * std::abs(other.turn - spot.turn) < apart) {
                if (spot.slack > other.slack)
                    other = spot;
                return;
            }
        if (m_result.places.size() < m_limits.mostPlaces)
            m_result.places.push_back(spot);
    }

    void split(const Box& box) {
        const bool turns = spreadOfTurn(box) > std::hypot(box.halfX, box.halfY);
        if (turns) {
            for (const int k : {-1, 1}) {
                Box half = box;
                half.halfTurn /= 2;
                half.middle.turn += k * half.halfTurn;
                look(half);
            }
            return;
        }
        const bool x = box.halfX > box.halfY / 1.5, y = box.halfY > box.halfX / 1.5;
        for (const int i : {-1, 1})
            for (const int j : {-1, 1}) {
                if ((!x && i > 0) || (!y && j > 0))
                    continue;
                Box part = box;
                if (x) {
                    part.halfX /= 2;
                    part.middle.pivot.x += i * part.halfX;
                }
                if (y) {
                    part.halfY /= 2;
                    part.middle.pivot.y += j * part.halfY;
                }
                look(part);
            }
    }

    static constexpr int kMostEased = 40;
    static constexpr double kRounding = 1e-7; ///< mm

    const Slack& m_slack;
    const SearchLimits& m_limits;
    bool m_mayTurn;
    int m_eased = 0;
    std::priority_queue<Box> m_queue;
    SearchResult m_result;
};

} // namespace

SearchResult findPlaces(const Slack& slack, const SearchLimits& limits, std::optional<double> turn,
                        std::optional<Point> pivot) {
    const bool mayTurn = !turn && slack.period() > 0;
    Search search(slack, limits, mayTurn);
    const double lowTurn = turn.value_or(0), highTurn = mayTurn ? slack.period() : lowTurn;
    if (pivot)
        return search.run(pivot->x, pivot->x, pivot->y, pivot->y, lowTurn, highTurn);
    const double in = slack.inner() + slack.clear();
    const shape::Box& box = slack.bounds();
    return search.run(box.low.x + in, box.high.x - in, box.low.y + in, box.high.y - in, lowTurn, highTurn);
}

Spot pushed(const Slack& slack, Spot spot, double direction, double finest) {
    const Point along = shape::polar(1, direction);
    const shape::Box& box = slack.bounds();
    double step = std::max(box.width(), box.height()) / 2;
    constexpr double kTurns[] = {0, 0.4, -0.4, 0.8, -0.8, 1.2, -1.2, 1.5, -1.5}; // radians off the direction
    while (step > finest) {
        bool moved = false;
        for (const double turn : kTurns) {
            const Point to = spot.pivot + shape::polar(step, direction + turn);
            if (shape::dot(to - spot.pivot, along) <= 0)
                continue;
            const double there = slack.at(to, spot.turn, 0);
            if (there >= 0) {
                spot.pivot = to;
                spot.slack = there;
                moved = true;
                break;
            }
        }
        if (!moved)
            step /= 2;
    }
    return spot;
}

Spot eased(const Slack& slack, Spot spot, double step, double finest, bool mayTurn) {
    double angle = 0;
    while (step > finest) {
        bool better = false;
        for (int i = 0; i < 8 && !better; ++i) {
            const Point to = spot.pivot + shape::polar(step, angle + i * std::numbers::pi / 4);
            if (const double there = slack.at(to, spot.turn, spot.slack); there > spot.slack) {
                spot = {to, spot.turn, there};
                better = true;
            }
        }
        for (int i = -1; mayTurn && i <= 1 && !better; i += 2) {
            const double turn = spot.turn + i * step / slack.reach();
            if (const double there = slack.at(spot.pivot, turn, spot.slack); there > spot.slack) {
                spot = {spot.pivot, turn, there};
                better = true;
            }
        }
        if (!better)
            step /= 2;
        angle += 2.4; // the golden angle: no direction is left out for ever
    }
    return spot;
}

} // namespace pw::placement
