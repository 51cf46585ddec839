#include "app/gui/models/check_text.h"

#include "app/gui/models/field_text.h"

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
    if (check.kind == verdict::CheckKind::Fit) // short: it stands in a narrow column
        return checkFigure(*check.margin, check.unit, system)
            .replace(QStringLiteral("\u00a0in"), QStringLiteral("″"));
    return local(units::number(*check.margin, 2));
}

} // namespace pw::gui
