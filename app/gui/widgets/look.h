#pragma once

#include "app/gui/widgets/palette.h"

#include <QFont>
#include <QObject>
#include <QRectF>
#include <QString>

class QPainter;
class QWidget;

namespace pw::gui {

/// The sizes of type in use. Nothing is smaller than Label.
enum class Type {
    Verdict,    ///< the word, 44 bold
    Figure,     ///< stop torque, rated load: 26 bold
    Value,      ///< in a field, 18 bold
    ValuePlain, ///< an assumed or worked-out value, 18
    Title,      ///< of a group, 16 bold
    Sentence,   ///< 16
    Row,        ///< a check, 15.5
    RowBold,
    Button, ///< and views, 15
    ButtonBold,
    Label, ///< and echo, source: 14
    LabelBold
};

/// Colours, type and sizes as they are now. One per program; `changed` tells every widget to lay itself out
/// anew.
class Look : public QObject {
    Q_OBJECT

public:
    static Look& now();

    const Palette& colours() const { return paletteFor(m_tone); }
    Tone tone() const { return m_tone; }
    double scale() const { return m_scale; }
    bool lessMotion() const { return m_lessMotion; }
    QFont font(Type type) const;
    /// Design pixels (at 96 dpi) to the pixels of now.
    int px(double design) const;
    double pxF(double design) const { return design * m_scale; }

    void set(Tone tone, double scale);
    void setLessMotion(bool less) { m_lessMotion = less; }

    /// How much larger the user's own font is than an ordinary one of 11 pt at 96 dpi; 1 at least.
    static double scaleOfUserFont(const QFont& font);

Q_SIGNALS:
    void changed();

private:
    Look();
    Tone m_tone = Tone::Light;
    double m_scale = 1;
    bool m_lessMotion = false;
    QString m_family;
};

/// One line, upright on the x-height of the box and not on the font's own (tall) line; cut with dots when too
/// long.
void drawLine(QPainter& painter, const QRectF& box, Qt::Alignment horizontal, const QString& text,
              bool cut = true);

/// Where the baseline of such a line lies.
double baselineIn(const QRectF& box, const QFont& font);

/// Colours and letters for a window of its own (menu, question, dialog): those take nothing over from the one
/// they belong to.
void dress(QWidget& window);

} // namespace pw::gui
