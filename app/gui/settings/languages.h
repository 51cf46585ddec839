#pragma once

#include <QString>
#include <vector>

namespace pw::gui::settings {

struct Language {
    QString code; ///< "en"
    QString name; ///< as its own speakers write it
};

/// What the window can speak: English, which it is written in, and every translation that came with the
/// program (platewright_CODE.qm, beside it or in share/platewright/translations).
std::vector<Language> languages();

/// Makes the application speak the chosen one. Before any window.
void speakChosenLanguage();

} // namespace pw::gui::settings
