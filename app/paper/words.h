#pragma once

#include "core/units/format.h"
#include "core/verdict/check.h"

#include <QCoreApplication>
#include <QString>
#include <string>

namespace pw::paper {

/// Every word on paper goes through here.
struct Paper {
    Q_DECLARE_TR_FUNCTIONS(pw::paper::Paper)
};

inline QString toQt(const std::string& text) {
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

/// "holds", "thin" and so on, as the reader says it.
QString gradeWord(verdict::Grade grade);

/// A steel as the job names it; that it is not known is said.
QString steelWord(const std::string& name);

/// As a drill or a rule is marked: inches in fractions where one is within 0.0005 in.
inline std::string asMarked(units::Length length, units::System system) {
    return system == units::System::Inch ? units::inchFraction(length) : units::show(length, system);
}

/// The figure alone, for a table or drawing that states its unit once.
std::string bare(units::Length length, units::System system);

/// A place to lay out by: to 0.1 mm, to the 1/64 in or else to 0.001 in; without a unit.
std::string asLaidOut(units::Length length, units::System system);

/// As a dial is read: to 0.001 mm or 0.0001 in.
std::string onDial(units::Length reading, units::System system);

template<class Q>
QString both(const Q& value, units::System system) {
    const auto other = system == units::System::Metric ? units::System::Inch : units::System::Metric;
    return toQt(units::show(value, system)) + QStringLiteral(" (") + toQt(units::show(value, other)) +
           QStringLiteral(")");
}

} // namespace pw::paper
