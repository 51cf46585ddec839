#include "app/tongues/tongues.h"

#include "core/util/say.h"

#include <memory>
#include <QCoreApplication>
#include <QDir>
#include <QLibraryInfo>
#include <QLocale>
#include <QTranslator>

// Of a static library nobody else asks for its resources; the macro must stand outside every namespace.
static void bringTranslations() {
    Q_INIT_RESOURCE(translations);
}

namespace pw::tongues {

namespace {

/// Kept to the program's end: sentences are asked of it from every thread.
std::unique_ptr<QTranslator>& spoken() {
    static std::unique_ptr<QTranslator> translator;
    return translator;
}

QStringList folders() {
    const QDir at(QCoreApplication::applicationDirPath());
    return {QStringLiteral(":/translations"),
            at.filePath(QStringLiteral("../share/platewright/translations"))};
}

std::string translate(const char* sentence, long long count) {
    QString text = spoken()->translate("Say", sentence, nullptr, static_cast<int>(count));
    if (count >= 0)
        text.replace(QStringLiteral("%n"), QString::number(count));
    return text.toStdString();
}

/// Buttons and words of Qt's own dialogs, where the desktop has them.
void speakOfToolkit(const QString& code) {
    auto* translator = new QTranslator(QCoreApplication::instance());
    if (translator->load(QStringLiteral("qtbase_") + code,
                         QLibraryInfo::path(QLibraryInfo::TranslationsPath)))
        QCoreApplication::installTranslator(translator);
    else
        delete translator;
}

void follow(const QString& code) {
    if (const QLocale chosen(code); QLocale().language() != chosen.language())
        QLocale::setDefault(chosen);
}

char markOf(const QLocale& locale) {
    return locale.decimalPoint() == QLatin1String(",") ? ',' : '.';
}

} // namespace

QStringList languages() {
    bringTranslations();
    QStringList codes{QStringLiteral("en")};
    for (const QString& folder : folders())
        for (const QString& file :
             QDir(folder).entryList({QStringLiteral("platewright_*.qm")}, QDir::Files, QDir::Name))
            codes << file.section(QLatin1Char('_'), 1).section(QLatin1Char('.'), 0, 0);
    codes.removeDuplicates();
    return codes;
}

bool speak(const QString& code) {
    bringTranslations();
    setTongue({});
    if (spoken())
        QCoreApplication::removeTranslator(spoken().get());
    Tongue tongue{nullptr, markOf(QLocale())};
    bool found = code == QLatin1String("en");
    for (const QString& folder : folders()) {
        auto translator = std::make_unique<QTranslator>();
        if (found || !translator->load(QStringLiteral("platewright_%1.qm").arg(code), folder))
            continue;
        found = true;
        follow(code);
        speakOfToolkit(code);
        QCoreApplication::installTranslator(translator.get());
        spoken() = std::move(translator);
        tongue = {translate, markOf(QLocale())};
    }
    setTongue(tongue);
    return found;
}

} // namespace pw::tongues
