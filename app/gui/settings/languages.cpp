#include "app/gui/settings/languages.h"

#include "app/gui/settings/settings.h"

#include <QCoreApplication>
#include <QDir>
#include <QLocale>
#include <QTranslator>

namespace pw::gui::settings {

namespace {

QStringList folders() {
    const QDir at(QCoreApplication::applicationDirPath());
    return {at.filePath(QStringLiteral("../share/platewright/translations")),
            at.filePath(QStringLiteral("translations"))};
}

QString fileOf(const QString& code) {
    return QStringLiteral("platewright_%1.qm").arg(code);
}

} // namespace

std::vector<Language> languages() {
    std::vector<Language> found{{QStringLiteral("en"), QStringLiteral("English")}};
    for (const QString& folder : folders())
        for (const QString& file :
             QDir(folder).entryList({fileOf(QStringLiteral("*"))}, QDir::Files, QDir::Name)) {
            const QString code = file.section(QLatin1Char('_'), 1).section(QLatin1Char('.'), 0, 0);
            const QString name = QLocale(code).nativeLanguageName();
            found.push_back({code, name.isEmpty() ? code : name});
        }
    return found;
}

void speakChosenLanguage() {
    if (language() == QLatin1String("en"))
        return;
    auto* translator = new QTranslator(QCoreApplication::instance());
    for (const QString& folder : folders())
        if (translator->load(fileOf(language()), folder)) {
            QCoreApplication::installTranslator(translator);
            return;
        }
    delete translator;
}

} // namespace pw::gui::settings
