#pragma once

#include <QString>
#include <QStringList>

/// Makes the program speak a language: window, paper, core and engine alike (core/util/say.h), Qt's own
/// dialogs, and the decimal mark of what is shown. Translations are built in; another one may lie as
/// platewright_CODE.qm in share/platewright/translations beside the program.
namespace pw::tongues {

/// "en" and every language there is a translation for, by code.
QStringList languages();

/// To be called once at program start, before anything is said and after QCoreApplication exists. False when
/// there is no such translation; the program then speaks English. The decimal mark is the desktop's, unless
/// the desktop speaks another language than the one that is chosen: then that language's.
bool speak(const QString& code);

} // namespace pw::tongues
