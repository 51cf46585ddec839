#pragma once

#include <compare>
#include <numbers>

/// Quantities cross every interface as types that are made and read by naming the unit. Inside a kernel:
/// plain double in one system (mm, N, MPa = N/mm2, N.mm, degrees C, radians).
namespace pw::units {

/// Conversion factors, exact by definition. Source: NIST SP 811 (2008), appendix B.
inline constexpr double kMmPerInch = 25.4;
inline constexpr double kNewtonPerPoundForce = 4.4482216152605;
inline constexpr double kNewtonPerKilogramForce = 9.80665;
inline constexpr double kMpaPerPsi = kNewtonPerPoundForce / (kMmPerInch * kMmPerInch);
inline constexpr double kNmmPerFootPound = kNewtonPerPoundForce * 12.0 * kMmPerInch;
inline constexpr double kKgPerPound = 0.45359237;

namespace detail {

/// Same-kind arithmetic. Length + Force does not compile.
template<class Self>
class Quantity {
public:
    constexpr Quantity() = default;
    constexpr auto operator<=>(const Quantity&) const = default; // NOLINT(modernize-use-nullptr): none here

    friend constexpr Self operator+(Self a, Self b) { return Self(a.m_base + b.m_base); }
    friend constexpr Self operator-(Self a, Self b) { return Self(a.m_base - b.m_base); }
    friend constexpr Self operator-(Self a) { return Self(-a.m_base); }
    friend constexpr Self operator*(Self a, double f) { return Self(a.m_base * f); }
    friend constexpr Self operator*(double f, Self a) { return Self(a.m_base * f); }
    friend constexpr Self operator/(Self a, double f) { return Self(a.m_base / f); }
    friend constexpr double operator/(Self a, Self b) { return a.m_base / b.m_base; }
    constexpr Self& operator+=(Self b) { return m_base += b.m_base, static_cast<Self&>(*this); }
    constexpr Self& operator-=(Self b) { return m_base -= b.m_base, static_cast<Self&>(*this); }

    /// The number in the base unit of its kind, for generic code (parsing, formatting) only.
    constexpr double base() const { return m_base; }
    static constexpr Self fromBase(double base) { return Self(base); }

protected:
    explicit constexpr Quantity(double base) : m_base(base) {}
    double m_base = 0;
};

} // namespace detail

/// Base: mm.
class Length : public detail::Quantity<Length> {
public:
    using Quantity::Quantity;
    explicit constexpr Length(double mm) : Quantity(mm) {}
    static constexpr Length fromMm(double mm) { return Length(mm); }
    static constexpr Length fromInch(double inch) { return Length(inch * kMmPerInch); }
    constexpr double mm() const { return m_base; }
    constexpr double inch() const { return m_base / kMmPerInch; }
};

/// Base: mm2.
class Area : public detail::Quantity<Area> {
public:
    using Quantity::Quantity;
    explicit constexpr Area(double mm2) : Quantity(mm2) {}
    static constexpr Area fromMm2(double mm2) { return Area(mm2); }
    static constexpr Area fromSquareInch(double in2) { return Area(in2 * kMmPerInch * kMmPerInch); }
    constexpr double mm2() const { return m_base; }
    constexpr double squareInch() const { return m_base / (kMmPerInch * kMmPerInch); }
};

/// Base: N.
class Force : public detail::Quantity<Force> {
public:
    using Quantity::Quantity;
    explicit constexpr Force(double newton) : Quantity(newton) {}
    static constexpr Force fromN(double newton) { return Force(newton); }
    static constexpr Force fromLbf(double lbf) { return Force(lbf * kNewtonPerPoundForce); }
    constexpr double newton() const { return m_base; }
    constexpr double lbf() const { return m_base / kNewtonPerPoundForce; }
};

/// Stiffness of a spring. Base: N/mm.
class Rate : public detail::Quantity<Rate> {
public:
    using Quantity::Quantity;
    explicit constexpr Rate(double newtonPerMm) : Quantity(newtonPerMm) {}
    static constexpr Rate fromNPerMm(double newtonPerMm) { return Rate(newtonPerMm); }
    static constexpr Rate fromLbfPerInch(double v) { return Rate(v * kNewtonPerPoundForce / kMmPerInch); }
    constexpr double newtonPerMm() const { return m_base; }
    constexpr double lbfPerInch() const { return m_base * kMmPerInch / kNewtonPerPoundForce; }
};

/// Base: N.mm.
class Torque : public detail::Quantity<Torque> {
public:
    using Quantity::Quantity;
    explicit constexpr Torque(double newtonMm) : Quantity(newtonMm) {}
    static constexpr Torque fromNmm(double newtonMm) { return Torque(newtonMm); }
    static constexpr Torque fromNm(double newtonM) { return Torque(newtonM * 1000.0); }
    static constexpr Torque fromFootPound(double v) { return Torque(v * kNmmPerFootPound); }
    constexpr double newtonMm() const { return m_base; }
    constexpr double newtonM() const { return m_base / 1000.0; }
    constexpr double footPound() const { return m_base / kNmmPerFootPound; }
};

/// Base: N.mm (a spring's stored energy; one joule is 1000 N.mm).
class Energy : public detail::Quantity<Energy> {
public:
    using Quantity::Quantity;
    explicit constexpr Energy(double newtonMm) : Quantity(newtonMm) {}
    static constexpr Energy fromJoule(double joule) { return Energy(joule * 1000.0); }
    constexpr double joule() const { return m_base / 1000.0; }
    constexpr double footPound() const { return m_base / kNmmPerFootPound; }
};

/// Stress and pressure. Base: MPa.
class Stress : public detail::Quantity<Stress> {
public:
    using Quantity::Quantity;
    explicit constexpr Stress(double mpa) : Quantity(mpa) {}
    static constexpr Stress fromMpa(double mpa) { return Stress(mpa); }
    static constexpr Stress fromPsi(double psi) { return Stress(psi * kMpaPerPsi); }
    static constexpr Stress fromKsi(double ksi) { return Stress(ksi * 1000.0 * kMpaPerPsi); }
    static constexpr Stress fromBar(double bar) { return Stress(bar * 0.1); }
    constexpr double mpa() const { return m_base; }
    constexpr double ksi() const { return m_base / (1000.0 * kMpaPerPsi); }
};

/// Base: radian.
class Angle : public detail::Quantity<Angle> {
public:
    using Quantity::Quantity;
    explicit constexpr Angle(double radian) : Quantity(radian) {}
    static constexpr Angle fromRadian(double radian) { return Angle(radian); }
    static constexpr Angle fromDegree(double degree) { return Angle(degree * std::numbers::pi / 180.0); }
    constexpr double radian() const { return m_base; }
    constexpr double degree() const { return m_base * 180.0 / std::numbers::pi; }
};

/// A point on the scale, not a difference. Base: degree Celsius.
class Temperature : public detail::Quantity<Temperature> {
public:
    using Quantity::Quantity;
    explicit constexpr Temperature(double celsius) : Quantity(celsius) {}
    static constexpr Temperature fromCelsius(double celsius) { return Temperature(celsius); }
    static constexpr Temperature fromFahrenheit(double f) { return Temperature((f - 32.0) / 1.8); }
    constexpr double celsius() const { return m_base; }
    constexpr double fahrenheit() const { return m_base * 1.8 + 32.0; }
};

/// Base: kg.
class Mass : public detail::Quantity<Mass> {
public:
    using Quantity::Quantity;
    explicit constexpr Mass(double kg) : Quantity(kg) {}
    static constexpr Mass fromKg(double kg) { return Mass(kg); }
    constexpr double kg() const { return m_base; }
    constexpr double pound() const { return m_base / kKgPerPound; }
};

constexpr Area operator*(Length a, Length b) {
    return Area::fromMm2(a.mm() * b.mm());
}
constexpr Length operator/(Area a, Length b) {
    return Length::fromMm(a.mm2() / b.mm());
}
constexpr Torque operator*(Force f, Length arm) {
    return Torque::fromNmm(f.newton() * arm.mm());
}
constexpr Torque operator*(Length arm, Force f) {
    return f * arm;
}
constexpr Length operator/(Torque t, Force f) {
    return Length::fromMm(t.newtonMm() / f.newton());
}
constexpr Force operator/(Torque t, Length arm) {
    return Force::fromN(t.newtonMm() / arm.mm());
}
constexpr Stress operator/(Force f, Area a) {
    return Stress::fromMpa(f.newton() / a.mm2());
}
constexpr Force operator*(Stress s, Area a) {
    return Force::fromN(s.mpa() * a.mm2());
}
constexpr Force operator*(Rate k, Length x) {
    return Force::fromN(k.newtonPerMm() * x.mm());
}
constexpr Rate operator/(Force f, Length x) {
    return Rate::fromNPerMm(f.newton() / x.mm());
}
constexpr Length operator/(Force f, Rate k) {
    return Length::fromMm(f.newton() / k.newtonPerMm());
}

/// A figure known only as [low, high]; one value has low == high.
template<class T>
struct Range {
    T low{};
    T high{};

    static constexpr Range exactly(T value) { return {value, value}; }
    constexpr bool isOne() const { return low == high; }
    friend constexpr bool operator==(const Range&, const Range&) = default;
    friend constexpr Range operator+(const Range& a, const Range& b) {
        return {a.low + b.low, a.high + b.high};
    }
    friend constexpr Range operator*(const Range& a, double f) { return {a.low * f, a.high * f}; }
};

} // namespace pw::units
