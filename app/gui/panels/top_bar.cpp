#include "app/gui/panels/top_bar.h"

#include "app/gui/widgets/look.h"
#include "app/gui/widgets/plain_tip.h"
#include "app/gui/widgets/segments.h"
#include "app/gui/widgets/text_block.h"
#include "app/gui/widgets/word_button.h"

#include <QHBoxLayout>
#include <QMenu>
#include <QPainter>

namespace pw::gui {

TopBar::TopBar(QMenu* jobMenu, QWidget* parent)
    : QWidget(parent), m_job(new WordButton(tr("Job"), WordButton::Style::Flat, this)),
      m_undo(new WordButton(tr("Undo"), WordButton::Style::Flat, this)),
      m_redo(new WordButton(tr("Redo"), WordButton::Style::Flat, this)),
      m_rack(new WordButton(tr("Rack"), WordButton::Style::Flat, this)),
      m_cut(new WordButton(tr("Cut file"), WordButton::Style::Boxed, this)),
      m_solid(new WordButton(tr("Solid"), WordButton::Style::Boxed, this)),
      m_words(new TextBlock(Type::Label, &Palette::muted, this)),
      m_units(new Segments({tr("mm"), tr("inch")}, tr("Units"), this)) {
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(14, 0, 12, 0);
    row->setSpacing(8);
    m_job->setOpens(true);
    row->addWidget(m_job);
    row->addWidget(m_undo);
    row->addWidget(m_redo);
    row->addWidget(m_rack);
    row->addSpacing(8);
    m_words->setMaxLines(1);
    m_words->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    row->addWidget(m_words, 1, Qt::AlignVCenter);
    row->addWidget(m_units);
    row->addSpacing(8);
    row->addWidget(m_cut);
    row->addWidget(m_solid);
    m_cut->setAccessibleDescription(tr("Writes a DXF for the cutting table"));
    m_solid->setAccessibleDescription(tr("Writes a STEP solid"));
    connect(m_job, &QAbstractButton::clicked, this,
            [this, jobMenu] { jobMenu->popup(m_job->mapToGlobal(QPoint(0, m_job->height()))); });
    connect(m_undo, &QAbstractButton::clicked, this, &TopBar::undo);
    connect(m_redo, &QAbstractButton::clicked, this, &TopBar::redo);
    connect(m_units, &Segments::chosen, this, [this](int index) {
        Q_EMIT unitsChosen(index == 1 ? units::System::Inch : units::System::Metric);
    });
    connect(m_rack, &QAbstractButton::clicked, this, &TopBar::rack);
    setRackOpen(false);
    connect(m_cut, &QAbstractButton::clicked, this, &TopBar::cutFile);
    connect(m_solid, &QAbstractButton::clicked, this, &TopBar::solid);
    const auto settle = [this] { setFixedHeight(Look::now().px(48)); };
    connect(&Look::now(), &Look::changed, this, settle);
    settle();
}

QSize TopBar::sizeHint() const {
    return {800, Look::now().px(48)};
}

void TopBar::paintEvent(QPaintEvent*) {
    const Palette& c = Look::now().colours();
    QPainter painter(this);
    painter.fillRect(rect(), c.panel);
    painter.setPen(c.rule);
    painter.drawLine(0, height() - 1, width(), height() - 1);
}

void TopBar::setHistory(bool canUndo, const QString& undoText, bool canRedo, const QString& redoText) {
    m_undo->setEnabled(canUndo);
    m_redo->setEnabled(canRedo);
    m_undo->setToolTip(canUndo ? plainTip(tr("Undo: %1").arg(undoText)) : QString());
    m_redo->setToolTip(canRedo ? plainTip(tr("Redo: %1").arg(redoText)) : QString());
}

void TopBar::setFileWords(const QString& words) {
    m_words->setText(words);
}

void TopBar::setRackOpen(bool open) {
    m_rack->setText(open ? tr("Plan") : tr("Rack"));
    m_rack->setAccessibleDescription(open ? tr("Back to the plan")
                                          : tr("The pieces you have, best first for this job"));
    m_rack->updateGeometry();
}

void TopBar::setUnits(units::System system) {
    m_units->setCurrent(system == units::System::Inch ? 1 : 0);
}

void TopBar::setOutputs(bool possible) {
    m_cut->setEnabled(possible);
    m_solid->setEnabled(possible);
}

} // namespace pw::gui
