#include "core/stations/pin_fit.h"

#include <algorithm>
#include <cmath>
#include <Eigen/Dense>
#include <limits>
#include <numbers>

// mm and radians throughout. Angles on the circle are unknowns as arc lengths, so that all unknowns are
// lengths.
namespace pw::stations {

namespace {

using Eigen::MatrixXd;
using Eigen::VectorXd;

constexpr int kMostSteps = 200;

/// sin of half the angle between two pins that divide a circle evenly.
double evenChord(const PinEquation& e, int count) {
    return std::sin(std::numbers::pi * std::abs(e.first - e.second) / count);
}

double medianOf(std::vector<double> values) {
    std::ranges::sort(values);
    return values[values.size() / 2];
}

/// Size and pin to begin with.
std::pair<double, double> firstGuess(const std::vector<PinEquation>& equations, int count,
                                     std::optional<double> pin) {
    double p = pin.value_or(0);
    if (!pin) {
        std::vector<double> pins;
        for (const auto& over : equations)
            for (const auto& between : equations)
                if (over.sign > 0 && between.sign < 0)
                    // Both in the measure of a chord: over / chord - between / chord = pin (1/chord +
                    // 1/chord).
                    pins.push_back(
                        (over.read / evenChord(over, count) - between.read / evenChord(between, count)) /
                        (1 / evenChord(over, count) + 1 / evenChord(between, count)));
        p = pins.empty() ? 0 : medianOf(pins);
    }
    std::vector<double> radii;
    for (const auto& e : equations)
        radii.push_back((e.read - e.sign * p) / (2 * evenChord(e, count)));
    return {std::max(medianOf(radii), 1e-3), p};
}

/// One way of describing the pins by unknowns.
class Model {
public:
    Model(PinFreedom freedom, int count, std::optional<double> pin, double radius, double firstPin)
        : m_freedom(freedom), m_count(count), m_pin(pin), m_scale(radius) {
        const int places = freedom == PinFreedom::EvenCircle ? 1
                           : freedom == PinFreedom::OnCircle ? count
                                                             : 2 * count;
        x = VectorXd::Zero(places + (pin ? 0 : 1));
        for (int i = 0; i < count && freedom != PinFreedom::EvenCircle; ++i) {
            const double angle = 2 * std::numbers::pi * i / count;
            if (freedom == PinFreedom::Free) {
                x[2 * i] = radius * std::cos(angle);
                x[2 * i + 1] = radius * std::sin(angle);
            } else if (i > 0) {
                x[i] = angle * radius;
            }
        }
        if (freedom != PinFreedom::Free)
            x[0] = radius;
        if (!pin)
            x[x.size() - 1] = firstPin;
    }

    /// Ways to move all pins at once that no reading sees.
    int rigid() const { return m_freedom == PinFreedom::Free ? 3 : 0; }

    shape::Point place(int i) const {
        if (m_freedom == PinFreedom::Free)
            return {x[2 * i], x[2 * i + 1]};
        return shape::polar(x[0], angle(i));
    }
    double pin() const { return m_pin ? *m_pin : x[x.size() - 1]; }

    double fitted(const PinEquation& e) const {
        return shape::distance(place(e.first), place(e.second)) + e.sign * pin();
    }

    void derivatives(const PinEquation& e, Eigen::Ref<Eigen::RowVectorXd> row) const {
        row.setZero();
        const shape::Point d = place(e.first) - place(e.second);
        const double length = std::max(shape::norm(d), 1e-9);
        const shape::Point u = d * (1 / length);
        for (const auto& [i, way] : {std::pair{e.first, 1.0}, {e.second, -1.0}}) {
            if (m_freedom == PinFreedom::Free) {
                row[2 * i] += way * u.x;
                row[2 * i + 1] += way * u.y;
                continue;
            }
            row[0] += way * shape::dot(u, shape::polar(1, angle(i)));
            if (m_freedom == PinFreedom::OnCircle && i > 0)
                row[i] += way * shape::dot(u, shape::polar(x[0], angle(i) + std::numbers::pi / 2)) / m_scale;
        }
        if (!m_pin)
            row[row.size() - 1] += e.sign;
    }

    VectorXd x;

private:
    double angle(int i) const {
        if (m_freedom == PinFreedom::EvenCircle)
            return 2 * std::numbers::pi * i / m_count;
        return i == 0 ? 0 : x[i] / m_scale;
    }

    PinFreedom m_freedom;
    int m_count;
    std::optional<double> m_pin;
    double m_scale; ///< radius that arc lengths are measured at
};

VectorXd offOf(const Model& model, const std::vector<PinEquation>& equations) {
    VectorXd off(static_cast<Eigen::Index>(equations.size()));
    for (std::size_t k = 0; k < equations.size(); ++k)
        off[static_cast<Eigen::Index>(k)] = equations[k].read - model.fitted(equations[k]);
    return off;
}

MatrixXd derivativesOf(const Model& model, const std::vector<PinEquation>& equations) {
    MatrixXd jacobian(static_cast<Eigen::Index>(equations.size()), model.x.size());
    Eigen::RowVectorXd row(model.x.size());
    for (std::size_t k = 0; k < equations.size(); ++k) {
        model.derivatives(equations[k], row);
        jacobian.row(static_cast<Eigen::Index>(k)) = row;
    }
    return jacobian;
}

bool improve(Model& model, const std::vector<PinEquation>& equations) {
    double damping = 1e-3;
    VectorXd off = offOf(model, equations);
    for (int step = 0; step < kMostSteps; ++step) {
        const MatrixXd jacobian = derivativesOf(model, equations);
        const MatrixXd normal = jacobian.transpose() * jacobian;
        const VectorXd gradient = jacobian.transpose() * off;
        bool better = false;
        while (!better && damping < 1e8) {
            const MatrixXd damped = normal + damping * MatrixXd::Identity(normal.rows(), normal.cols());
            Model trial = model;
            trial.x += damped.ldlt().solve(gradient);
            const VectorXd next = offOf(trial, equations);
            if (next.squaredNorm() <= off.squaredNorm()) {
                const double change = (trial.x - model.x).norm();
                model = trial;
                off = next;
                damping = std::max(damping / 5, 1e-12);
                better = true;
                if (change < 1e-10)
                    return true;
            } else {
                damping *= 5;
            }
        }
        if (!better)
            return gradient.norm() < 1e-6;
    }
    return false;
}

/// 1 over the smallest singular value that is not a motion of the whole.
double magnificationOf(const Model& model, const std::vector<PinEquation>& equations) {
    const int unknowns = static_cast<int>(model.x.size());
    const Eigen::JacobiSVD<MatrixXd> svd(derivativesOf(model, equations));
    const int needed = unknowns - model.rigid();
    if (svd.singularValues().size() < needed)
        return std::numeric_limits<double>::infinity();
    const double least = svd.singularValues()[needed - 1];
    return least > 1e-9 ? 1 / least : std::numeric_limits<double>::infinity();
}

} // namespace

PinFit fitPins(PinFreedom freedom, const std::vector<PinEquation>& equations, int count,
               std::optional<double> pin) {
    const auto [radius, firstPin] = firstGuess(equations, count, pin);
    Model model(freedom, count, pin, radius, firstPin);
    PinFit fit;
    fit.unknowns = static_cast<int>(model.x.size()) - model.rigid();
    fit.converged = improve(model, equations);
    for (int i = 0; i < count; ++i)
        fit.pins.push_back(model.place(i));
    fit.pin = model.pin();
    fit.off = offOf(model, equations);
    fit.worst = fit.off.size() > 0 ? fit.off.cwiseAbs().maxCoeff() : 0;
    fit.magnified = magnificationOf(model, equations);
    return fit;
}

shape::Circle nearestCircle(const std::vector<shape::Point>& points) {
    shape::Point c;
    for (const auto& p : points)
        c = c + p * (1.0 / static_cast<double>(points.size()));
    double r = 0;
    for (int step = 0; step < 100; ++step) {
        r = 0;
        for (const auto& p : points)
            r += shape::distance(p, c) / static_cast<double>(points.size());
        // Gauss-Newton in the centre, the radius eliminated.
        Eigen::Matrix2d normal = Eigen::Matrix2d::Zero();
        Eigen::Vector2d right = Eigen::Vector2d::Zero(), mean = Eigen::Vector2d::Zero();
        for (const auto& p : points) {
            const shape::Point u = (p - c) * (1 / std::max(shape::distance(p, c), 1e-9));
            mean += Eigen::Vector2d(u.x, u.y) / static_cast<double>(points.size());
        }
        for (const auto& p : points) {
            const double d = shape::distance(p, c);
            const shape::Point u = (p - c) * (1 / std::max(d, 1e-9));
            const Eigen::Vector2d way = Eigen::Vector2d(u.x, u.y) - mean;
            normal += way * way.transpose();
            right += way * (d - r);
        }
        const Eigen::Vector2d move = normal.fullPivLu().solve(right);
        c = c + shape::Point{move.x(), move.y()};
        if (move.norm() < 1e-12)
            break;
    }
    return {c, r};
}

EvenCircle nearestEvenCircle(const std::vector<shape::Point>& points) {
    EvenCircle even;
    const auto n = static_cast<double>(points.size());
    for (const auto& p : points)
        even.centre = even.centre + p * (1 / n);
    shape::Point z;
    for (std::size_t i = 0; i < points.size(); ++i)
        z = z + shape::rotated(points[i], -2 * std::numbers::pi * static_cast<double>(i) / n) * (1 / n);
    even.radius = shape::norm(z);
    even.start = std::atan2(z.y, z.x);
    for (std::size_t i = 0; i < points.size(); ++i)
        even.off.push_back(shape::distance(
            points[i], even.centre + shape::polar(even.radius, even.start + 2 * std::numbers::pi *
                                                                                static_cast<double>(i) / n)));
    return even;
}

} // namespace pw::stations
