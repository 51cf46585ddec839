#include "core/stations/pin_layout.h"

#include "core/stations/pin_fit.h"
#include "core/util/say.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <string>

namespace pw::stations {

namespace {

constexpr int kMostPins = 24;
/// A pin's place that may be so many reading errors off is not known from the readings.
constexpr double kMostMagnified = 8;
/// A figure that is so many reading errors from what fits is not one of the ordinary errors.
constexpr double kDoubt = 3;

util::Problem problem(std::string message) {
    return {"stations.readings", std::move(message)};
}

struct Figures {
    std::vector<PinEquation> equations;
    std::vector<PinFigure> shown;
};

Figures figuresOf(const std::vector<job::PinReading>& readings) {
    Figures figures;
    const auto add = [&](const job::PinReading& reading, Length read, bool over) {
        figures.equations.push_back({reading.first - 1, reading.second - 1, over ? 1.0 : -1.0, read.mm()});
        figures.shown.push_back({reading.first, reading.second, over, read, {}, 0, false});
    };
    for (const auto& reading : readings) {
        if (reading.over)
            add(reading, *reading.over, true);
        if (reading.between)
            add(reading, *reading.between, false);
    }
    return figures;
}

std::optional<util::Problem> troubleOf(const std::vector<PinEquation>& equations, int count,
                                       std::optional<double> pin) {
    if (count < 2 || count > kMostPins)
        return problem(say("two to %1 pins can be found from readings, not %2", {kMostPins, count}));
    if (equations.empty())
        return problem(say("Needed: readings. Lay the calipers over two pins, or between them"));
    std::vector<bool> touched(static_cast<std::size_t>(count), false);
    for (const auto& e : equations) {
        if (std::max(e.first, e.second) >= count)
            return problem(say("a reading names pin %1 of %2", {std::max(e.first, e.second) + 1, count}));
        touched[static_cast<std::size_t>(e.first)] = touched[static_cast<std::size_t>(e.second)] = true;
    }
    const auto some = [&](bool over) {
        return std::ranges::any_of(equations, [over](const PinEquation& e) { return (e.sign > 0) == over; });
    };
    if (!pin && !(some(true) && some(false)))
        return problem(say("Needed: how far across one pin is, or readings both over and between the pins"));
    if (pin)
        for (const auto& e : equations)
            if (e.read - e.sign * *pin <= 0)
                return problem(say("over pins %1 and %2 it reads less than one pin is across",
                                   {e.first + 1, e.second + 1}));
    return {};
}

bool isKnown(const PinFit& fit) {
    return fit.converged && fit.magnified <= kMostMagnified;
}

/// The richest model that the equations fix.
std::pair<PinFreedom, PinFit> bestFit(const std::vector<PinEquation>& equations, int count,
                                      std::optional<double> pin) {
    std::set<int> touched;
    for (const auto& e : equations) {
        touched.insert(e.first);
        touched.insert(e.second);
    }
    if (static_cast<int>(touched.size()) == count && count > 2)
        for (const PinFreedom freedom : {PinFreedom::Free, PinFreedom::OnCircle})
            if (PinFit fit = fitPins(freedom, equations, count, pin); isKnown(fit))
                return {freedom, std::move(fit)};
    return {PinFreedom::EvenCircle, fitPins(PinFreedom::EvenCircle, equations, count, pin)};
}

std::vector<PinEquation> without(const std::vector<PinEquation>& equations, std::size_t left) {
    std::vector<PinEquation> rest = equations;
    rest.erase(rest.begin() + static_cast<std::ptrdiff_t>(left));
    return rest;
}

double fittedOf(const PinFit& fit, const PinEquation& e) {
    return shape::distance(fit.pins[static_cast<std::size_t>(e.first)],
                           fit.pins[static_cast<std::size_t>(e.second)]) +
           e.sign * fit.pin;
}

/// Leaves each figure out in turn. A single culprit takes its fit with it.
void findCulprit(PinLayout& layout, PinFit& fit, PinFreedom freedom,
                 const std::vector<PinEquation>& equations, int count, std::optional<double> pin,
                 double error) {
    const double allowed = kDoubt * error;
    if (fit.worst <= allowed)
        return;
    std::optional<PinFit> better;
    for (std::size_t k = 0; k < equations.size(); ++k) {
        PinFit rest = fitPins(freedom, without(equations, k), count, pin);
        if (!isKnown(rest) || rest.worst > allowed)
            continue;
        layout.doubtful.push_back(k);
        better = std::move(rest);
    }
    layout.disagree = layout.doubtful.empty();
    if (layout.doubtful.size() != 1)
        return;
    const PinEquation& wrong = equations[layout.doubtful.front()];
    fit = std::move(*better);
    layout.doubtfulByMm = wrong.read - fittedOf(fit, wrong);
    layout.doubtfulIsOtherWay = std::abs(layout.doubtfulByMm + wrong.sign * 2 * fit.pin) <= allowed;
    layout.figures[layout.doubtful.front()].leftOut = true;
}

/// Counter-clockwise, about the nearest circle's middle, turned to an even division that begins on x.
void place(PinLayout& layout, std::vector<shape::Point> pins) {
    if (shape::signedArea(shape::Loop{[&] {
            std::vector<shape::Vertex> corners;
            for (const auto& p : pins)
                corners.push_back({p, 0});
            return corners;
        }()}) < 0)
        for (auto& p : pins)
            p.y = -p.y;
    const EvenCircle even = nearestEvenCircle(pins);
    const shape::Circle circle =
        pins.size() > 2 ? nearestCircle(pins) : shape::Circle{even.centre, even.radius};
    for (const auto& p : pins)
        layout.pins.push_back(shape::rotated(p - circle.centre, -even.start));
    layout.circle = Length::fromMm(2 * circle.radius);
    layout.evenCircle = Length::fromMm(2 * even.radius);
    for (const double off : even.off)
        layout.fromEven.push_back(Length::fromMm(off));
}

} // namespace

Length PinLayout::worstFromEven() const {
    Length worst = Length::fromMm(0);
    for (const Length off : fromEven)
        worst = std::max(worst, off);
    return worst;
}

util::Result<PinLayout> findPinLayout(const std::vector<job::PinReading>& readings, int count,
                                      std::optional<Length> pin, double readingErrorMm) {
    Figures figures = figuresOf(readings);
    const std::optional<double> given = pin ? std::optional(pin->mm()) : std::nullopt;
    if (auto trouble = troubleOf(figures.equations, count, given))
        return *std::move(trouble);
    auto [freedom, fit] = bestFit(figures.equations, count, given);
    if (!fit.converged || !std::isfinite(fit.magnified) || fit.pin <= 0)
        return problem(say("no pins can be placed so that these readings come out; check them one by one"));
    PinLayout layout;
    layout.freedom = freedom;
    layout.figures = std::move(figures.shown);
    layout.spare = static_cast<int>(figures.equations.size()) - fit.unknowns;
    if (layout.spare > 0)
        findCulprit(layout, fit, freedom, figures.equations, count, given, readingErrorMm);
    double squares = 0;
    int used = 0;
    for (std::size_t k = 0; k < layout.figures.size(); ++k) {
        PinFigure& figure = layout.figures[k];
        const double fitted = fittedOf(fit, figures.equations[k]);
        figure.fitted = Length::fromMm(fitted);
        figure.offMm = figure.read.mm() - fitted;
        if (!figure.leftOut) {
            squares += figure.offMm * figure.offMm;
            ++used;
        }
    }
    if (const int spare = used - fit.unknowns; spare > 0)
        layout.scatterMm = std::sqrt(squares / spare);
    layout.pin = Length::fromMm(fit.pin);
    layout.pinWorkedOut = !pin;
    layout.magnified = fit.magnified;
    place(layout, fit.pins);
    return layout;
}

std::vector<std::pair<int, int>> pinPairs(PinPairs which, int count,
                                          const std::vector<job::PinReading>& have) {
    const int step = which == PinPairs::Neighbours ? 1 : which == PinPairs::EverySecond ? 2 : count / 2;
    std::vector<std::pair<int, int>> pairs;
    for (int i = 0; i < count && step > 0; ++i) {
        const std::pair<int, int> pair = std::minmax(i + 1, (i + step) % count + 1);
        const bool known = std::ranges::any_of(have, [&](const job::PinReading& reading) {
            return std::pair<int, int>(std::minmax(reading.first, reading.second)) == pair;
        });
        if (!known && pair.first != pair.second && std::ranges::find(pairs, pair) == pairs.end())
            pairs.push_back(pair);
    }
    return pairs;
}

} // namespace pw::stations
