#include "app/gui/settings/languages.h"

#include "app/gui/settings/settings.h"
#include "app/tongues/tongues.h"

#include <QLocale>

namespace pw::gui::settings {

std::vector<Language> languages() {
    std::vector<Language> found;
    for (const QString& code : tongues::languages()) {
        const QString name =
            code == QLatin1String("en") ? QStringLiteral("English") : QLocale(code).nativeLanguageName();
        found.push_back({code, name.isEmpty() ? code : name});
    }
    return found;
}

void speakChosenLanguage() {
    tongues::speak(language());
}

} // namespace pw::gui::settings
