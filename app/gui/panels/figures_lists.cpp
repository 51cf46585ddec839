#include "app/gui/panels/field_editor.h"
#include "app/gui/panels/figures_panel.h"
#include "app/gui/widgets/field_flow.h"
#include "app/gui/widgets/slim_scroll_area.h"
#include "app/gui/widgets/text_block.h"
#include "app/gui/widgets/word_button.h"

#include <algorithm>
#include <QTimer>

// The lists among the figures: one row open at a time, the others are sentences.
namespace pw::gui {

using jobfile::Tree;

WordButton* FiguresPanel::actionButton(const RowAction& action, const ActionPlace& place) {
    auto* button = new WordButton(action.words, WordButton::Style::Link);
    button->setAccessibleName(action.spoken);
    button->setEnabled(static_cast<bool>(action.make));
    // What it does may have changed since it was made: look it up when it is pressed.
    connect(button, &QAbstractButton::clicked, this, [this, place] {
        const auto lists = partLists(m_document.tree(), m_open, m_units);
        if (const RowAction* found = place.in(lists); found && found->make) {
            const RowAction now = *found;
            Tree after = m_document.tree();
            now.make(after);
            if (!now.opens.empty())
                m_openRow = now.opens;
            m_document.replace(std::move(after), now.spoken);
        }
    });
    m_actions.emplace_back(button, place);
    return button;
}

const RowAction* FiguresPanel::ActionPlace::in(const std::vector<PartList>& lists) const {
    if (list >= lists.size())
        return nullptr;
    const auto& actions = row.empty() ? &lists[list].actions : nullptr;
    if (actions)
        return action < actions->size() ? &(*actions)[action] : nullptr;
    for (const auto& each : lists[list].rows)
        if (each.path == row)
            return action < each.actions.size() ? &each.actions[action] : nullptr;
    return nullptr;
}

void FiguresPanel::buildRow(FieldFlow& flow, const PartRow& row, std::size_t list) {
    const bool open = row.alwaysOpen || row.path == m_openRow;
    if (!row.alwaysOpen) {
        auto* head = new WordButton(row.words, WordButton::Style::Link);
        head->setOpens(true);
        head->setCheckable(true);
        head->setChecked(open);
        connect(head, &QAbstractButton::clicked, this, [this, path = row.path](bool opens) {
            m_openRow = opens ? path : std::string();
            lightRow();
            // The button itself goes with it.
            QTimer::singleShot(0, this, &FiguresPanel::refresh);
        });
        flow.addRow(head);
        m_rowHeads[row.path] = head;
    }
    if (!open)
        return;
    for (const auto& field : row.fields)
        addField(flow, field);
    for (std::size_t i = 0; i < row.actions.size(); ++i)
        flow.addRow(actionButton(row.actions[i], {list, row.path, i}));
}

bool FiguresPanel::isUnfolded(const PartList& list) const {
    const auto asked = m_moreOpen.find(list.title.toStdString());
    return !list.folds || (asked != m_moreOpen.end() && asked->second) ||
           std::ranges::any_of(list.rows, [this](const PartRow& row) { return row.path == m_openRow; });
}

void FiguresPanel::buildLists(FieldFlow& flow) {
    const auto lists = partLists(m_document.tree(), m_open, m_units);
    for (std::size_t at = 0; at < lists.size(); ++at) {
        const PartList& list = lists[at];
        if (list.rows.empty() && list.actions.empty())
            continue;
        if (list.folds) {
            const bool open = isUnfolded(list);
            auto* title = new WordButton(list.title, WordButton::Style::Link);
            title->setOpens(true);
            title->setCheckable(true);
            title->setChecked(open);
            connect(title, &QAbstractButton::clicked, this,
                    [this, key = list.title.toStdString()](bool opens) {
                        m_moreOpen[key] = opens;
                        m_openRow.clear();
                        QTimer::singleShot(0, this, &FiguresPanel::refresh);
                    });
            flow.addRow(title);
            if (!open)
                continue;
        } else {
            auto* title = new TextBlock(Type::LabelBold);
            title->setText(list.title);
            flow.addRow(title);
        }
        auto* notes = new TextBlock(Type::Label);
        m_listNotes[at] = notes;
        flow.addRow(notes);
        for (const auto& row : list.rows)
            buildRow(flow, row, at);
        for (std::size_t i = 0; i < list.actions.size(); ++i)
            flow.addRow(actionButton(list.actions[i], {at, {}, i}));
    }
}

void FiguresPanel::refreshLists() {
    if (m_actions.empty() && m_rowHeads.empty())
        return;
    const auto lists = partLists(m_document.tree(), m_open, m_units);
    for (std::size_t at = 0; at < lists.size(); ++at) {
        if (const auto notes = m_listNotes.find(at); notes != m_listNotes.end()) {
            notes->second->setText(lists[at].notes.join(QLatin1Char('\n')));
            notes->second->setVisible(!lists[at].notes.isEmpty());
        }
        for (const auto& row : lists[at].rows) {
            if (const auto head = m_rowHeads.find(row.path);
                head != m_rowHeads.end() && head->second->text() != row.words) {
                head->second->setText(row.words);
                head->second->update();
            }
            for (const auto& field : row.fields)
                for (auto* editor : m_editors)
                    if (editor->field().path == field.path)
                        editor->setRemark(field.remark);
        }
    }
    for (const auto& [button, place] : m_actions)
        if (const RowAction* action = place.in(lists))
            button->setEnabled(static_cast<bool>(action->make));
}

void FiguresPanel::lightRow() {
    for (const auto& list : partLists(m_document.tree(), m_open, m_units))
        for (const auto& row : list.rows)
            if (row.path == m_openRow && !row.fields.empty())
                return Q_EMIT fieldEntered(row.fields.front().part, row.fields.front().index);
    Q_EMIT fieldEntered(PlanPart::None, 0);
}

void FiguresPanel::openRow(const std::string& path) {
    const std::string group = groupOf(m_document.tree(), path);
    if (group.empty())
        return;
    m_openRow = path;
    openGroup(group);
    refresh();
    lightRow();
    QTimer::singleShot(0, this, [this, path] {
        if (const auto head = m_rowHeads.find(path); head != m_rowHeads.end()) {
            const int top = head->second->mapTo(m_column, QPoint(0, 0)).y();
            m_scroll->ensureVisible(0, top + Look::now().px(200), 0, 0);
            m_scroll->ensureVisible(0, top, 0, 0);
        }
    });
}

} // namespace pw::gui
