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

QSettings session() {
    return QSettings(QStringLiteral("platewright"), QStringLiteral("session"));
}

QString snapKey(units::System system) {
    return system == units::System::Inch ? QStringLiteral("snap_inch") : QStringLiteral("snap_mm");
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

bool lessMotion() {
    return store().value(QStringLiteral("less_motion"), false).toBool();
}

void setLessMotion(bool less) {
    store().setValue(QStringLiteral("less_motion"), less);
}

double snapStepMm(units::System system) {
    const double unit = system == units::System::Inch ? units::kMmPerInch : 1.0;
    const double usual = system == units::System::Inch ? 1.0 / 16 : 1.0;
    return std::clamp(store().value(snapKey(system), usual).toDouble(), 1.0 / 64, 10.0) * unit;
}

void setSnapStepMm(units::System system, double mm) {
    store().setValue(snapKey(system), system == units::System::Inch ? mm / units::kMmPerInch : mm);
}

Paper paper() {
    const QString chosen = store().value(QStringLiteral("paper")).toString();
    if (chosen == QLatin1String("a4"))
        return Paper::A4;
    if (chosen == QLatin1String("letter"))
        return Paper::Letter;
    return QLocale().measurementSystem() == QLocale::ImperialUSSystem ? Paper::Letter : Paper::A4;
}

void setPaper(Paper paper) {
    store().setValue(QStringLiteral("paper"),
                     paper == Paper::Letter ? QStringLiteral("letter") : QStringLiteral("a4"));
}

QString rackPreference() {
    return store().value(QStringLiteral("rack_preference")).toString();
}

void setRackPreference(const QString& word) {
    store().setValue(QStringLiteral("rack_preference"), word);
}

QString language() {
    const QString desktop = QLocale().name().section(QLatin1Char('_'), 0, 0); // "C" has no translation
    return store().value(QStringLiteral("language"), desktop).toString();
}

void setLanguage(const QString& code) {
    store().setValue(QStringLiteral("language"), code);
}

bool mayReadRack(const QString& file) {
    return store().value(QStringLiteral("racks_outside")).toStringList().contains(file);
}

void allowRack(const QString& file) {
    QStringList files = store().value(QStringLiteral("racks_outside")).toStringList();
    if (!files.contains(file))
        store().setValue(QStringLiteral("racks_outside"), files << file);
}

// --- Session

bool isFirstStart() {
    auto kept = session();
    const bool first = !kept.contains(QStringLiteral("started"));
    kept.setValue(QStringLiteral("started"), true);
    return first;
}

void forgetSession() {
    session().clear();
}

QString lastFolder() {
    return session().value(QStringLiteral("folder"), QDir::homePath()).toString();
}

void setLastFolder(const QString& folder) {
    session().setValue(QStringLiteral("folder"), folder);
}

QStringList recentJobs() {
    return session().value(QStringLiteral("recent")).toStringList();
}

void addRecentJob(const QString& file) {
    constexpr int kMost = 30; // more than are shown: one that is missing today may be on a stick
    QStringList recent = recentJobs();
    recent.removeAll(file);
    recent.prepend(file);
    session().setValue(QStringLiteral("recent"), QStringList(recent.mid(0, kMost)));
}

QString lastRack() {
    return session().value(QStringLiteral("rack")).toString();
}

void setLastRack(const QString& file) {
    session().setValue(QStringLiteral("rack"), file);
}

QByteArray windowGeometry() {
    return session().value(QStringLiteral("geometry")).toByteArray();
}

void setWindowGeometry(const QByteArray& geometry) {
    session().setValue(QStringLiteral("geometry"), geometry);
}

QByteArray splitterState() {
    return session().value(QStringLiteral("columns")).toByteArray();
}

void setSplitterState(const QByteArray& state) {
    session().setValue(QStringLiteral("columns"), state);
}

int stripHeight() {
    return std::clamp(session().value(QStringLiteral("strip_height"), 0).toInt(), 0, 4000);
}

std::optional<bool> stripFolded() {
    const QVariant folded = session().value(QStringLiteral("strip_folded"));
    return folded.isValid() ? std::optional(folded.toBool()) : std::nullopt;
}

void setStrip(int height, std::optional<bool> folded) {
    session().setValue(QStringLiteral("strip_height"), height);
    if (folded)
        session().setValue(QStringLiteral("strip_folded"), *folded);
}

} // namespace pw::gui::settings
