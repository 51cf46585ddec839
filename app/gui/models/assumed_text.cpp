#include "app/gui/models/assumed_text.h"

#include "core/job/assumed.h"
#include "core/units/format.h"

namespace pw::gui {

namespace {

QString shown(const job::Given<units::Length>& length, units::System system) {
    return length ? QString::fromStdString(units::show(*length, system)) : QString();
}

QString word(job::Lubrication lubrication) {
    switch (lubrication) {
    case job::Lubrication::Dry:
        return QStringLiteral("dry");
    case job::Lubrication::Oiled:
        return QStringLiteral("oiled");
    case job::Lubrication::Moly:
        break;
    }
    return QStringLiteral("moly");
}

QString word(job::ThreadCondition condition) {
    switch (condition) {
    case job::ThreadCondition::Good:
        return QStringLiteral("good");
    case job::ThreadCondition::Worn:
        return QStringLiteral("worn");
    case job::ThreadCondition::Rusty:
        return QStringLiteral("rusty");
    case job::ThreadCondition::Damaged:
        break;
    }
    return QStringLiteral("damaged");
}

QString word(job::Into into) {
    switch (into) {
    case job::Into::Shaft:
        return QStringLiteral("shaft");
    case job::Into::Bar:
        return QStringLiteral("bar");
    case job::Into::Plate:
        return QStringLiteral("plate");
    case job::Into::Nut:
        break;
    }
    return QStringLiteral("nut");
}

} // namespace

QString assumedText(const std::string& path, const job::Job& job, const engine::Report* report,
                    units::System system) {
    const job::Assumed assumed = job::assume(job);
    if (path == "plate.steel")
        return QString::fromStdString(assumed.steel.name);
    if (path == "plate.stacked")
        return QString::number(assumed.stacked);
    if (path == "stations.land")
        return shown(assumed.land, system);
    if (path == "cutting.process") {
        const auto name = job::nameOf(assumed.process);
        return QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size()));
    }
    if (path == "cutting.kerf")
        return shown(assumed.habits.kerf, system);
    if (path == "cutting.layout_error")
        return shown(assumed.habits.layoutError, system);
    if (path == "cutting.growth")
        return shown(assumed.habits.growth, system);
    if (path == "wanted.margin")
        return QString::fromStdString(units::number(assumed.margin));
    if (path == "screw.turns")
        return assumed.turns == job::Turns::Nut ? QStringLiteral("nut") : QStringLiteral("screw");
    if (path == "screw.into")
        return word(assumed.into);
    if (path == "screw.lubrication")
        return word(assumed.lubrication);
    if (path == "screw.thread_condition")
        return word(assumed.threadCondition);
    if (!report)
        return {};
    if (path == "centre.bearing_outside")
        return shown(report->bearingOutside, system);
    if (path == "wanted.stamp" && report->screw.stamp)
        return QString::fromStdString(units::show(*report->screw.stamp, system));
    return {};
}

} // namespace pw::gui
