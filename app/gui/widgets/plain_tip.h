#pragma once

#include <QString>

namespace pw::gui {

/// Text for setToolTip() that is shown as it stands. A tool tip takes what looks like HTML for HTML, and a
/// title, a name or a file of a stranger may look like it: a picture from some folder, a link, or merely
/// "<b>".
inline QString plainTip(const QString& text) {
    return text.contains(QLatin1Char('<')) || text.contains(QLatin1Char('&'))
               ? QStringLiteral("<qt>%1</qt>").arg(text.toHtmlEscaped())
               : text;
}

} // namespace pw::gui
