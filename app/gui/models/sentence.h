#pragma once

#include "app/gui/models/field_text.h"

namespace pw::gui {

/// A message of the engine as it stands by itself: from a capital to a stop.
inline QString asSentence(const std::string& message) {
    QString words = local(message);
    if (words.isEmpty())
        return words;
    words[0] = words[0].toUpper();
    return words.endsWith(QLatin1Char('.')) ? words : words + QLatin1Char('.');
}

} // namespace pw::gui
