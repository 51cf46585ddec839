#include "app/gui/settings/settings.h"

#include <algorithm>
#include <QDir>
#include <QLocale>
#include <QSettings>

namespace pw::gui::settings {

namespace {

QSettings store() {
    return QSettings(QStringLiteral("platewright"), QStringLiteral("platewright"));
}

} // namespace

units::System unitSystem() {
    const QString chosen = store().value(QStringLiteral("units")).toString();
    if (chosen == QLatin1String("inch"))
        return units::System::Inch;
    if (chosen == QLatin1String("mm"))
        return units::System::Metric;
    return QLocale().measurementSystem() == QLocale::MetricSystem ? units::System::Metric
                                                                  : units::System::Inch;
}

void setUnitSystem(units::System system) {
    store().setValue(QStringLiteral("units"),
                     system == units::System::Inch ? QStringLiteral("inch") : QStringLiteral("mm"));
}

Colours colours() {
    const QString chosen = store().value(QStringLiteral("colours")).toString();
    if (chosen == QLatin1String("light"))
        return Colours::Light;
    if (chosen == QLatin1String("dark"))
        return Colours::Dark;
    return Colours::Follow;
}

void setColours(Colours colours) {
    const char* word = colours == Colours::Light ? "light" : colours == Colours::Dark ? "dark" : "follow";
    store().setValue(QStringLiteral("colours"), QLatin1String(word));
}

double textSize() {
    return std::clamp(store().value(QStringLiteral("text_size"), 1.0).toDouble(), 1.0, 2.0);
}

void setTextSize(double times) {
    store().setValue(QStringLiteral("text_size"), times);
}

QString lastFolder() {
    return store().value(QStringLiteral("session/folder"), QDir::homePath()).toString();
}

void setLastFolder(const QString& folder) {
    store().setValue(QStringLiteral("session/folder"), folder);
}

QByteArray windowGeometry() {
    return store().value(QStringLiteral("session/geometry")).toByteArray();
}

void setWindowGeometry(const QByteArray& geometry) {
    store().setValue(QStringLiteral("session/geometry"), geometry);
}

QByteArray splitterState() {
    return store().value(QStringLiteral("session/columns")).toByteArray();
}

void setSplitterState(const QByteArray& state) {
    store().setValue(QStringLiteral("session/columns"), state);
}

int stripHeight() {
    return std::clamp(store().value(QStringLiteral("session/strip_height"), 0).toInt(), 0, 4000);
}

std::optional<bool> stripFolded() {
    const QVariant folded = store().value(QStringLiteral("session/strip_folded"));
    return folded.isValid() ? std::optional(folded.toBool()) : std::nullopt;
}

void setStrip(int height, std::optional<bool> folded) {
    store().setValue(QStringLiteral("session/strip_height"), height);
    if (folded)
        store().setValue(QStringLiteral("session/strip_folded"), *folded);
}

} // namespace pw::gui::settings
