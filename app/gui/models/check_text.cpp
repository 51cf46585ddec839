#include "app/gui/models/check_text.h"

#include "app/gui/models/field_text.h"

#include <cmath>

namespace pw::gui {

QString checkFigure(double value, const std::string& unit, units::System system) {
    if (unit == "mm")
        return local(units::show(units::Length::fromMm(value), system));
    if (unit == "N")
        return local(units::show(units::Force::fromN(value), system));
    if (unit == "MPa")
        return local(units::show(units::Stress::fromMpa(value), system));
    if (unit == "N.mm")
        return local(units::show(units::Torque::fromNmm(value), system));
    if (unit == "N.m" || unit == "Nm")
        return local(units::show(units::Torque::fromNm(value), system));
    if (unit == "J")
        return local(units::show(units::Energy::fromJoule(value), system));
    const QString figure = local(units::number(value));
    return unit.empty() ? figure : figure + QChar(0xA0) + QString::fromStdString(unit);
}

QString marginText(const verdict::Check& check, units::System system) {
    if (!check.margin)
        return check.grade == verdict::Grade::Incomplete ? QStringLiteral("?") : QString();
    if (check.kind == verdict::CheckKind::Fit && !check.marginIsRatio) {
        // Short: it stands in a narrow column. A dial does not read more than two figures of a hundredth.
        const double value = *check.margin;
        const double unit = check.unit == "mm" && system == units::System::Inch ? units::kMmPerInch : 1.0;
        if (check.unit == "mm") {
            const double shown = value / unit;
            const double fine = unit == 1.0 ? 1e4 : 1e5;
            return local(units::number(std::round(shown * fine) / fine, std::abs(shown) < 0.1 ? 2 : 3)) +
                   (unit == 1.0 ? QStringLiteral("\u00a0mm") : QStringLiteral("″"));
        }
        return checkFigure(value, check.unit, system);
    }
    return local(units::number(*check.margin, 2));
}

} // namespace pw::gui
