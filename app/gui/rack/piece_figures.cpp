#include "app/gui/rack/piece_figures.h"

#include "app/gui/panels/field_editor.h"
#include "app/gui/widgets/field_flow.h"
#include "app/gui/widgets/look.h"
#include "app/gui/widgets/measure_card.h"
#include "app/gui/widgets/slim_scroll_area.h"
#include "app/gui/widgets/text_block.h"
#include "app/gui/widgets/word_button.h"

#include <algorithm>
#include <QApplication>
#include <QPainter>
#include <QTimer>
#include <QVBoxLayout>

namespace pw::gui {

namespace {

std::vector<const RowAction*> actionsIn(const std::vector<PieceSection>& sections) {
    std::vector<const RowAction*> actions;
    for (const PieceSection& section : sections)
        for (const PartList& list : section.lists) {
            for (const PartRow& row : list.rows)
                for (const RowAction& action : row.actions)
                    actions.push_back(&action);
            for (const RowAction& action : list.actions)
                actions.push_back(&action);
        }
    return actions;
}

} // namespace

PieceFigures::PieceFigures(QWidget* parent)
    : QWidget(parent), m_scroll(new SlimScrollArea(this)), m_column(new QWidget) {
    setAccessibleName(tr("Figures of the piece"));
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 1, 0);
    whole->addWidget(m_scroll);
    m_column->setAutoFillBackground(false);
    m_scroll->setWidget(m_column);
    auto* column = new QVBoxLayout(m_column);
    column->setSpacing(0);
    for (int i = 0; i < 4; ++i) { // as many as there are sections
        m_flows.push_back(new FieldFlow(m_column));
        column->addWidget(m_flows.back());
    }
    column->addStretch(1);
    const auto settle = [column] {
        const int side = Look::now().px(16);
        column->setContentsMargins(side, Look::now().px(8), side, Look::now().px(12));
    };
    connect(&Look::now(), &Look::changed, this, settle);
    settle();
}

PieceFigures::~PieceFigures() {
    // Editors hold on to boxes that the layout deletes with us.
    for (auto* editor : m_editors)
        delete editor;
}

QSize PieceFigures::sizeHint() const {
    return {Look::now().px(330), 500};
}

QSize PieceFigures::minimumSizeHint() const {
    return {Look::now().px(200), 120};
}

void PieceFigures::paintEvent(QPaintEvent*) {
    const Palette& c = Look::now().colours();
    QPainter painter(this);
    painter.fillRect(rect(), c.panel);
    painter.setPen(c.rule);
    painter.drawLine(width() - 1, 0, width() - 1, height());
}

std::vector<PieceSection> PieceFigures::sections() const {
    return m_rack && m_rack->piece(m_row) ? pieceSections(m_rack->tree(), at(), m_units)
                                          : std::vector<PieceSection>();
}

void PieceFigures::setPiece(RackDocument* rack, std::size_t row) {
    if (m_rack)
        disconnect(m_rack, nullptr, this, nullptr);
    m_rack = rack;
    m_row = row;
    m_openRow.clear();
    if (m_rack)
        connect(m_rack, &RackDocument::changed, this, &PieceFigures::refresh);
    rebuild(sections());
    m_scroll->ensureVisible(0, 0);
    refresh();
}

void PieceFigures::setUnits(units::System system) {
    m_units = system;
    for (auto* editor : m_editors)
        editor->setUnits(system);
    refresh();
}

std::string PieceFigures::signature(const std::vector<PieceSection>& sections) const {
    // What decides which fields there are; a change of it builds them anew.
    std::string s = at() + m_openRow;
    for (const PieceSection& section : sections) {
        s += '|';
        for (const Field& field : section.fields)
            s += field.path + ';';
        for (const PartList& list : section.lists) {
            s += '#' + std::to_string(list.actions.size());
            for (const PartRow& row : list.rows) {
                s += ';' + row.path + ':' + std::to_string(row.actions.size());
                for (const Field& field : row.fields)
                    s += ',' + field.path;
            }
        }
    }
    return s;
}

void PieceFigures::rebuild(const std::vector<PieceSection>& sections) {
    m_signature = signature(sections);
    for (auto* editor : m_editors) {
        // The keyboard passes from box to box as they go; nobody is entered by that.
        disconnect(editor, nullptr, this, nullptr);
        editor->deleteLater();
    }
    m_editors.clear();
    m_flowOf.clear();
    m_heads.clear();
    for (std::size_t i = 0; i < m_flows.size(); ++i) {
        FieldFlow& flow = *m_flows[i];
        flow.clear();
        if (i >= sections.size())
            continue;
        auto* title = new TextBlock(Type::Title);
        title->setText(sections[i].title);
        flow.addRow(title);
        for (const Field& field : sections[i].fields)
            addField(flow, field);
        for (const PartList& list : sections[i].lists)
            addList(flow, list);
    }
    QWidget* before = this;
    for (auto* editor : m_editors) {
        QWidget::setTabOrder(before, editor->box()->focusTarget());
        before = editor->box()->focusTarget();
    }
}

void PieceFigures::addField(FieldFlow& flow, const Field& field) {
    auto* editor = new FieldEditor(*m_rack, field, flow, this);
    editor->setUnits(m_units);
    connect(editor, &FieldEditor::entered, this, &PieceFigures::enter);
    connect(editor, &FieldEditor::exited, this, &PieceFigures::exit);
    m_editors.push_back(editor);
    m_flowOf[editor] = &flow;
}

void PieceFigures::addAction(FieldFlow& flow, const RowAction& action) {
    auto* button = new WordButton(action.words, WordButton::Style::Link);
    button->setAccessibleName(action.spoken);
    // What it does may have changed since it was made: look it up when it is pressed.
    connect(button, &QAbstractButton::clicked, this, [this, spoken = action.spoken] { act(spoken); });
    flow.addRow(button);
}

void PieceFigures::act(const QString& spoken) {
    const auto now = sections();
    for (const RowAction* action : actionsIn(now)) {
        if (action->spoken != spoken || !action->make)
            continue;
        jobfile::Tree after = m_rack->tree();
        action->make(after);
        if (!action->opens.empty())
            m_openRow = action->opens;
        m_rack->replace(std::move(after), spoken);
        return;
    }
}

void PieceFigures::addList(FieldFlow& flow, const PartList& list) {
    auto* title = new TextBlock(Type::LabelBold);
    title->setText(list.title);
    flow.addRow(title);
    for (const PartRow& row : list.rows) {
        const bool open = row.path == m_openRow;
        auto* head = new WordButton(row.words, WordButton::Style::Link);
        head->setOpens(true);
        head->setCheckable(true);
        head->setChecked(open);
        connect(head, &QAbstractButton::clicked, this, [this, path = row.path](bool opens) {
            m_openRow = opens ? path : std::string();
            // The button itself goes with it.
            QTimer::singleShot(0, this, &PieceFigures::refresh);
        });
        flow.addRow(head);
        m_heads[row.path] = head;
        if (!open)
            continue;
        for (const Field& field : row.fields)
            addField(flow, field);
        for (const RowAction& action : row.actions)
            addAction(flow, action);
    }
    for (const RowAction& action : list.actions)
        addAction(flow, action);
}

void PieceFigures::refresh() {
    const auto now = sections();
    if (signature(now) != m_signature) {
        const QWidget* focus = QApplication::focusWidget();
        const QWidget* box = focus ? focus->parentWidget() : nullptr;
        const std::string path = box ? box->objectName().toStdString() : std::string();
        const bool ours = focus && isAncestorOf(focus);
        rebuild(now);
        if (ours && !path.empty())
            for (auto* editor : m_editors)
                if (editor->field().path == path)
                    editor->focus();
    }
    std::map<std::string, const Field*> fields;
    for (const PieceSection& section : now) {
        for (const Field& field : section.fields)
            fields[field.path] = &field;
        for (const PartList& list : section.lists)
            for (const PartRow& row : list.rows) {
                for (const Field& field : row.fields)
                    fields[field.path] = &field;
                const auto head = m_heads.find(row.path);
                if (head != m_heads.end() && head->second->text() != row.words) {
                    head->second->setText(row.words);
                    head->second->update();
                }
            }
    }
    for (auto* editor : m_editors) {
        if (const auto field = fields.find(editor->field().path); field != fields.end())
            editor->reword(*field->second);
        editor->refresh(nullptr);
    }
}

void PieceFigures::enter(FieldEditor* editor) {
    MeasureCard* card = editor->field().how.isEmpty()
                            ? nullptr
                            : new MeasureCard(editor->field().sketch, editor->field().how);
    m_flowOf[editor]->openCard(editor->box(), card);
    QTimer::singleShot(0, editor->box(), [this, box = editor->box()] {
        const int top = box->mapTo(m_column, QPoint(0, 0)).y();
        m_scroll->ensureVisible(0, top + box->height() + Look::now().px(100), 0, 0);
        m_scroll->ensureVisible(0, top, 0, 0);
    });
    editor->refresh(nullptr);
    Q_EMIT fieldEntered(editor->field().part, editor->field().index);
}

void PieceFigures::exit(FieldEditor* editor) {
    for (FieldFlow* flow : m_flows)
        flow->openCard(nullptr, nullptr);
    editor->refresh(nullptr);
    Q_EMIT fieldEntered(PlanPart::None, 0);
}

void PieceFigures::openPart(PlanPart part, std::size_t index) {
    for (const PieceSection& section : sections())
        for (const PartList& list : section.lists)
            for (const PartRow& row : list.rows)
                for (const Field& field : row.fields)
                    if (field.part == part && field.index == index) {
                        m_openRow = row.path;
                        refresh();
                        QTimer::singleShot(0, this, [this, path = row.path] {
                            if (const auto head = m_heads.find(path); head != m_heads.end()) {
                                const int top = head->second->mapTo(m_column, QPoint(0, 0)).y();
                                m_scroll->ensureVisible(0, top + Look::now().px(180), 0, 0);
                                m_scroll->ensureVisible(0, top, 0, 0);
                            }
                        });
                        return;
                    }
}

void PieceFigures::openField(const std::string& key) {
    for (auto* editor : m_editors)
        if (editor->field().path == at() + "." + key)
            return editor->focus();
}

void PieceFigures::finishTyping() {
    if (QWidget* focus = QApplication::focusWidget(); focus && isAncestorOf(focus))
        focus->clearFocus(); // editingFinished comes with it
}

} // namespace pw::gui
