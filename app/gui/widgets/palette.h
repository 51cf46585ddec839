#pragma once

#include "core/verdict/check.h"

#include <QColor>
#include <QPalette>

namespace pw::gui {

enum class Tone { Light, Dark };

/// The colours of one verdict: a filled head, what stands on it, and the same verdict as text or small mark
/// on a panel. Incomplete is never filled; its fill is the panel.
struct VerdictColours {
    QColor fill, onFill, text;
};

/// Every colour of the window by the part it plays. Touch is whatever can be grabbed or is being edited,
/// never a verdict; a verdict colour is never a button, an error or decoration.
struct Palette {
    Tone tone = Tone::Light;
    QColor ground, panel, field;
    QColor ink, muted;
    QColor rule;       ///< hairlines only, carries no meaning
    QColor strongRule; ///< box edges, slider track
    QColor steel, steelEdge, scrap, scrapEdge;
    QColor touch, onTouch, touchSoft;
    VerdictColours holds, thin, sets, breaks, incomplete;

    const VerdictColours& of(verdict::Grade grade) const;
    /// For Qt's own widgets: menus, dialogs, scroll bars.
    QPalette forQt() const;
};

const Palette& paletteFor(Tone tone);

} // namespace pw::gui
