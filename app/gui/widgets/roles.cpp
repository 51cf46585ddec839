#include "app/gui/widgets/roles.h"

#include <QAccessibleWidget>
#include <QHash>
#include <QWidget>

namespace pw::gui {

namespace {

QAccessibleInterface* roleOf(const QString& className, QObject* object) {
    static const QHash<QString, QAccessible::Role> roles{
        {QStringLiteral("pw::gui::TextBlock"), QAccessible::StaticText},
        {QStringLiteral("pw::gui::VerdictHead"), QAccessible::StaticText},
        {QStringLiteral("pw::gui::MeasureCard"), QAccessible::StaticText},
        {QStringLiteral("pw::gui::NoteLine"), QAccessible::StaticText},
        {QStringLiteral("pw::gui::NoticeBar"), QAccessible::Notification},
        {QStringLiteral("pw::gui::Segments"), QAccessible::Grouping},
        {QStringLiteral("pw::gui::WorkBar"), QAccessible::StaticText},
        {QStringLiteral("pw::gui::PieceView"), QAccessible::Graphic},
        {QStringLiteral("pw::gui::PlanView"), QAccessible::Graphic},
        {QStringLiteral("pw::gui::BentView"), QAccessible::Graphic},
        {QStringLiteral("pw::gui::SectionView"), QAccessible::Graphic},
        {QStringLiteral("pw::gui::CurveView"), QAccessible::Chart},
        {QStringLiteral("pw::gui::LadderView"), QAccessible::Chart}};
    const auto role = roles.find(className);
    auto* widget = qobject_cast<QWidget*>(object);
    return role != roles.end() && widget ? new QAccessibleWidget(widget, *role) : nullptr;
}

} // namespace

void teachRoles() {
    QAccessible::installFactory(roleOf);
}

} // namespace pw::gui
