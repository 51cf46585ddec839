#include "app/gui/rack/piece_editor.h"

#include "app/gui/rack/piece_figures.h"
#include "app/gui/rack/piece_view.h"
#include "app/gui/widgets/button_row.h"
#include "app/gui/widgets/look.h"
#include "app/gui/widgets/word_button.h"

#include <QBoxLayout>
#include <QPainter>

namespace pw::gui {

namespace {

/// Narrower than this the picture stands over the figures, design px.
constexpr double kBeside = 600, kFigures = 330;

} // namespace

PieceEditor::PieceEditor(QWidget* parent)
    : QWidget(parent), m_halves(new QBoxLayout(QBoxLayout::LeftToRight)), m_figures(new PieceFigures(this)),
      m_view(new PieceView(this)),
      m_done(new WordButton(tr("Back to the rack"), WordButton::Style::Boxed, this)),
      m_points(new WordButton(tr("Type its points…"), WordButton::Style::Boxed, this)),
      m_sides(new WordButton(tr("Four sides and a diagonal…"), WordButton::Style::Boxed, this)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    m_halves->setSpacing(0);
    m_halves->addWidget(m_figures, 0);
    m_halves->addWidget(m_view, 1);
    column->addLayout(m_halves, 1);
    auto* foot = new QVBoxLayout;
    foot->setContentsMargins(16, 8, 16, 8);
    auto* buttons = new ButtonRow(this);
    for (WordButton* button : {m_done, m_points, m_sides})
        buttons->add(button);
    foot->addWidget(buttons);
    column->addLayout(foot);
    connect(m_figures, &PieceFigures::fieldEntered, m_view, &PieceView::light);
    connect(m_view, &PieceView::picked, m_figures, &PieceFigures::openPart);
    connect(m_done, &QAbstractButton::clicked, this, [this] {
        m_figures->finishTyping();
        Q_EMIT done();
    });
    connect(m_points, &QAbstractButton::clicked, this, &PieceEditor::pointsAsked);
    connect(m_sides, &QAbstractButton::clicked, this, &PieceEditor::sidesAsked);
    setTabOrder(m_figures, m_view);
    setTabOrder(m_view, m_done);
}

void PieceEditor::setPiece(RackDocument* rack, std::size_t row) {
    if (m_rack)
        disconnect(m_rack, nullptr, this, nullptr);
    m_rack = rack;
    m_row = row;
    if (m_rack)
        connect(m_rack, &RackDocument::changed, this, &PieceEditor::settle);
    m_figures->setPiece(rack, row);
    m_view->setPiece(rack, row);
    settle();
}

void PieceEditor::setUnits(units::System system) {
    m_figures->setUnits(system);
    m_view->setUnits(system);
}

void PieceEditor::setSnap(double mm) {
    m_view->setSnap(mm);
}

void PieceEditor::resizeEvent(QResizeEvent*) {
    settle();
}

void PieceEditor::settle() {
    const Look& look = Look::now();
    const bool beside = width() >= look.pxF(kBeside);
    m_halves->setDirection(beside ? QBoxLayout::LeftToRight : QBoxLayout::BottomToTop);
    m_halves->setStretchFactor(m_figures, beside ? 0 : 2);
    // Where there is little room, these stand only where they are of use.
    const bool corners =
        m_rack && textAt(m_rack->tree(), RackDocument::pathOf(m_row) + ".outline.shape") == "polygon";
    m_points->setVisible(beside || corners);
    m_sides->setVisible(beside || corners);
    m_figures->setMinimumWidth(beside ? look.px(kFigures) : 0);
    m_figures->setMaximumWidth(beside ? look.px(kFigures) : QWIDGETSIZE_MAX);
}

void PieceEditor::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), Look::now().colours().panel);
}

} // namespace pw::gui
