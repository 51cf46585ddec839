#include "app/gui/panels/figures_panel.h"

#include "app/gui/models/job_rows.h"
#include "app/gui/models/sentences.h"
#include "app/gui/models/spring_words.h"
#include "app/gui/panels/field_editor.h"
#include "app/gui/widgets/colour.h"
#include "app/gui/widgets/field_flow.h"
#include "app/gui/widgets/group_header.h"
#include "app/gui/widgets/measure_card.h"
#include "app/gui/widgets/segments.h"
#include "app/gui/widgets/slim_scroll_area.h"
#include "app/gui/widgets/text_block.h"
#include "app/gui/widgets/word_button.h"

#include <QApplication>
#include <QEvent>
#include <QHBoxLayout>
#include <QPainter>
#include <QTimer>
#include <QVBoxLayout>

namespace pw::gui {

using jobfile::Tree;

namespace {

/// A title within an open group, with one word at its end that takes the thing away.
class PartTitle : public QWidget {
public:
    PartTitle(const QString& title, WordButton* action) {
        auto* row = new QHBoxLayout(this);
        row->setContentsMargins(0, Look::now().px(4), 0, 0);
        auto* words = new TextBlock(Type::LabelBold);
        words->setText(title);
        row->addWidget(words, 1, Qt::AlignVCenter);
        if (action)
            row->addWidget(action, 0, Qt::AlignVCenter);
    }
};

} // namespace

FiguresPanel::FiguresPanel(Document& document, QWidget* parent)
    : QWidget(parent), m_document(document), m_scroll(new SlimScrollArea(this)), m_column(new QWidget) {
    setAccessibleName(tr("Figures of the job"));
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 1, 0);
    whole->addWidget(m_scroll);
    m_column->setAutoFillBackground(false);
    m_scroll->setWidget(m_column);
    auto* column = new QVBoxLayout(m_column);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);

    for (const auto& group : fieldGroups(m_document.tree())) {
        Group g;
        g.id = group.id;
        g.header = new GroupHeader(group.title, m_column);
        g.body = new QWidget(m_column);
        g.flow = new FieldFlow(g.body);
        auto* inner = new QVBoxLayout(g.body);
        inner->setContentsMargins(Look::now().px(16), 0, Look::now().px(16), Look::now().px(6));
        inner->addWidget(g.flow);
        column->addWidget(g.header);
        column->addWidget(g.body);
        g.body->installEventFilter(this);
        g.header->installEventFilter(this);
        connect(g.header, &QAbstractButton::clicked, this,
                [this, id = g.id] { openGroup(m_open == id ? std::string() : id); });
        m_groups.push_back(g);
    }
    column->addStretch(1);
    connect(&m_document, &Document::changed, this, &FiguresPanel::refresh);
    connect(&m_document, &Document::replaced, this, [this] { m_untaken.clear(); });
    connect(&m_document, &Document::fileChanged, this,
            [this] { m_wantsTotal = m_wantsTotal && m_document.isChanged(); });
    connect(&Look::now(), &Look::changed, this, [this] {
        for (auto& group : m_groups)
            group.body->layout()->setContentsMargins(Look::now().px(16), 0, Look::now().px(16),
                                                     Look::now().px(6));
        updateGeometry();
        update();
    });
    rebuild();
}

FiguresPanel::~FiguresPanel() {
    // Editors hold on to boxes that the layout deletes with us.
    for (auto* editor : m_editors)
        delete editor;
}

QSize FiguresPanel::sizeHint() const {
    return {Look::now().px(316), 600};
}

QSize FiguresPanel::minimumSizeHint() const {
    return {Look::now().px(200), 120};
}

void FiguresPanel::paintEvent(QPaintEvent*) {
    const Palette& c = Look::now().colours();
    QPainter painter(this);
    painter.fillRect(rect(), c.panel);
    painter.setPen(c.rule);
    painter.drawLine(width() - 1, 0, width() - 1, height());
}

bool FiguresPanel::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Paint) {
        // The open group stands out: lighter ground, touch-blue edge.
        for (const auto& group : m_groups) {
            const bool open = group.id == m_open;
            if (!open || (watched != group.body && watched != group.header))
                continue;
            auto* widget = static_cast<QWidget*>(watched);
            const Palette& c = Look::now().colours();
            QPainter painter(widget);
            painter.fillRect(widget->rect(), mixed(c.panel, c.field, 0.5));
            painter.fillRect(QRect(0, 0, Look::now().px(4), widget->height()), c.touch);
        }
    }
    return QWidget::eventFilter(watched, event);
}

FiguresPanel::Group* FiguresPanel::find(const std::string& id) {
    for (auto& group : m_groups)
        if (group.id == id)
            return &group;
    return nullptr;
}

void FiguresPanel::setUnits(units::System system) {
    m_units = system;
    for (auto* editor : m_editors)
        editor->setUnits(system);
    refresh();
}

void FiguresPanel::setReport(std::shared_ptr<const engine::Report> report) {
    m_report = std::move(report);
    refresh();
}

void FiguresPanel::setRack(RackState rack) {
    m_rack = std::move(rack);
    refresh();
}

std::string FiguresPanel::signature() const {
    // What decides which fields there are; a change of it builds the open group anew.
    const Tree& tree = m_document.tree();
    std::string s = m_open + '|' + textAt(tree, "work") + '|';
    for (const auto& group : fieldGroups(tree))
        if (group.id == m_open)
            for (const auto& field : group.fields)
                s += field.appliesTo(tree) ? '1' : '0';
    s += '|' + std::to_string(tree.at("load.total") ? 1 : 0) + (m_wantsTotal ? "t" : "s");
    if (m_open == "load")
        for (std::size_t i = 0; i < rowCount(tree, "springs"); ++i)
            s += ';' + std::to_string(rowCount(tree, "springs[" + std::to_string(i) + "].loads"));
    for (const auto& list : partLists(tree, m_open, m_units)) {
        s += '#' + m_openRow + std::to_string(list.actions.size()) + (isUnfolded(list) ? 'u' : 'f');
        for (const auto& row : list.rows)
            s += ';' + row.path + ':' + std::to_string(row.fields.size()) + ',' +
                 std::to_string(row.actions.size());
    }
    return s;
}

void FiguresPanel::openGroup(const std::string& id) {
    if (id == m_open)
        return;
    m_open = id;
    rebuild();
    if (Group* group = find(id))
        QTimer::singleShot(0, group->body, [this, body = group->body, header = group->header] {
            m_scroll->ensureWidgetVisible(body, 0, 8);
            m_scroll->ensureWidgetVisible(header, 0, 0);
        });
}

std::vector<std::size_t> FiguresPanel::rowsAlong(const std::string& path) const {
    std::vector<std::size_t> rows;
    for (std::size_t at = path.find('['); at != std::string::npos; at = path.find('[', at + 1))
        rows.push_back(rowCount(m_document.tree(), path.substr(0, at)));
    return rows;
}

void FiguresPanel::keepUntaken() {
    for (const auto* editor : m_editors) {
        const std::string& path = editor->field().path;
        if (const QString text = editor->untaken(); !text.isEmpty())
            m_untaken[path] = {m_built, m_rows[path], text, editor->field().label};
    }
    // Rows are added at the end. Where one was taken out, nobody knows whether it is the same row. A figure
    // that this job does not ask for any more has no box to lead to.
    const Tree& tree = m_document.tree();
    const auto groups = fieldGroups(tree);
    const auto isAskedFor = [&](const std::string& path) {
        return std::ranges::any_of(groups, [&](const auto& group) {
            return group.applies && std::ranges::any_of(group.fields, [&](const Field& field) {
                       return field.path == path && field.appliesTo(tree);
                   });
        });
    };
    std::erase_if(m_untaken, [&](const auto& kept) {
        const auto& [path, untaken] = kept;
        return untaken.rows.empty() ? !isAskedFor(path) : rowsAlong(path) < untaken.rows;
    });
}

void FiguresPanel::tellNotCounted() {
    std::vector<NotCounted> figures;
    for (const auto* editor : m_editors)
        if (editor->isLeft() && !editor->untaken().isEmpty())
            figures.push_back({editor->field().path, editor->field().label});
    for (const auto& [path, kept] : m_untaken)
        figures.push_back({path, kept.label});
    if (figures != m_told)
        Q_EMIT notCountedChanged(m_told = figures);
}

void FiguresPanel::rebuild() {
    keepUntaken();
    m_signature = signature();
    for (auto* editor : m_editors)
        editor->deleteLater();
    m_editors.clear();
    m_rowHeads.clear();
    m_listNotes.clear();
    m_actions.clear();
    const auto specs = fieldGroups(m_document.tree());
    for (std::size_t i = 0; i < m_groups.size(); ++i) {
        Group& group = m_groups[i];
        const bool open = group.id == m_open;
        group.header->setTitle(specs[i].title);
        group.header->setOpen(open);
        group.flow->clear();
        group.header->setVisible(specs[i].applies);
        group.body->setVisible(open && specs[i].applies);
    }
    buildOpenGroup();
    m_built = m_open;
    m_rows.clear();
    for (auto* editor : m_editors) {
        const std::string& path = editor->field().path;
        m_rows[path] = rowsAlong(path);
        if (const auto kept = m_untaken.find(path); kept != m_untaken.end()) {
            editor->putBack(kept->second.text);
            m_untaken.erase(kept);
        }
    }
    refresh();
}

FieldEditor* FiguresPanel::addField(FieldFlow& flow, Field field) {
    auto* editor = new FieldEditor(m_document, std::move(field), flow, this);
    editor->setUnits(m_units);
    connect(editor, &FieldEditor::entered, this, &FiguresPanel::enter);
    connect(editor, &FieldEditor::exited, this, &FiguresPanel::exit);
    connect(editor, &FieldEditor::settled, this, &FiguresPanel::tellNotCounted);
    m_editors.push_back(editor);
    return editor;
}

void FiguresPanel::buildOpenGroup() {
    Group* group = find(m_open);
    if (!group)
        return;
    const Tree& tree = m_document.tree();
    for (const auto& spec : fieldGroups(tree)) {
        if (spec.id != m_open)
            continue;
        if (spec.id == "load" && !isPull(tree)) {
            const bool given = loadSource(tree) == LoadSource::Given || m_wantsTotal;
            auto* source =
                new Segments({tr("From the springs"), tr("Known total")}, tr("Where the load comes from"));
            source->setCurrent(given ? 1 : 0);
            connect(source, &Segments::chosen, this, [this](int index) {
                m_wantsTotal = index == 1;
                if (index == 0 && m_document.tree().at("load.total"))
                    m_document.edit("load.total", Tree(), tr("Load from the springs"));
                QTimer::singleShot(0, this, &FiguresPanel::refresh);
            });
            group->flow->addRow(source);
            if (given) {
                for (const auto& field : spec.fields)
                    addField(*group->flow, field);
                if (rowCount(tree, "springs") > 0) {
                    auto* note = new TextBlock(Type::Label, &Palette::muted);
                    note->setText(tr("A known total counts instead of the springs."));
                    group->flow->addRow(note);
                }
            } else {
                buildSprings(*group->flow);
            }
            continue;
        }
        for (const auto& field : spec.fields)
            if (field.appliesTo(tree))
                addField(*group->flow, withRack(field, tree, m_rack, m_units));
        buildLists(*group->flow);
    }
    // Tab goes down the column.
    QWidget* before = group->header;
    for (auto* editor : m_editors) {
        QWidget::setTabOrder(before, editor->box()->focusTarget());
        before = editor->box()->focusTarget();
    }
}

void FiguresPanel::removeAt(const std::string& path, const QString& label) {
    m_document.edit(path, Tree(), label);
}

void FiguresPanel::buildSprings(FieldFlow& flow) {
    const Tree& tree = m_document.tree();
    const std::size_t count = rowCount(tree, "springs");
    for (std::size_t i = 0; i < count; ++i) {
        const std::string at = "springs[" + std::to_string(i) + "]";
        auto* remove = new WordButton(tr("Remove"), WordButton::Style::Link);
        remove->setAccessibleName(tr("Remove spring %1").arg(i + 1));
        remove->setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Fixed);
        connect(remove, &QAbstractButton::clicked, this, [this, at] { removeAt(at, tr("Remove spring")); });
        flow.addRow(new PartTitle(tr("Spring %1").arg(i + 1), remove));
        const SpringFields fields = springFields(tree, i);
        for (const auto& field : fields.main)
            addField(flow, field);
        for (std::size_t r = 0; r < fields.readings.size(); ++r) {
            for (const auto& field : fields.readings[r])
                addField(flow, field);
            if (fields.readings.size() > 1) {
                auto* less = new WordButton(tr("Remove reading %1").arg(r + 1), WordButton::Style::Link);
                connect(less, &QAbstractButton::clicked, this,
                        [this, row = at + ".loads[" + std::to_string(r) + "]"] {
                            removeAt(row, tr("Remove reading"));
                        });
                flow.addRow(less);
            }
        }
        auto* reading = new WordButton(tr("Add a reading"), WordButton::Style::Link);
        connect(reading, &QAbstractButton::clicked, this, [this, at] {
            const std::size_t next = rowCount(m_document.tree(), at + ".loads");
            m_document.edit(at + ".loads[" + std::to_string(next) + "]", Tree::object(), tr("Add a reading"));
        });
        flow.addRow(reading);
        auto* notes = new TextBlock(Type::Label);
        m_listNotes[i] = notes;
        flow.addRow(notes);

        // Wire and coil are for those who have no force; open when one of them is known.
        bool known = m_moreOpen[at];
        for (const auto& field : fields.more)
            known = known || tree.at(field.path);
        auto* more = new WordButton(tr("Wire, coils and rate"), WordButton::Style::Link);
        more->setOpens(true);
        more->setCheckable(true);
        more->setChecked(known);
        flow.addRow(more);
        std::vector<FieldBox*> boxes;
        for (const auto& field : fields.more) {
            boxes.push_back(addField(flow, field)->box());
            boxes.back()->setVisible(known);
        }
        connect(more, &QAbstractButton::toggled, this, [this, boxes, at, &flow](bool open) {
            m_moreOpen[at] = open;
            for (auto* box : boxes)
                box->setVisible(open);
            flow.updateGeometry();
            QApplication::postEvent(&flow, new QEvent(QEvent::LayoutRequest));
        });
    }
    auto* add = new WordButton(count == 0 ? tr("Add a spring") : tr("Add a spring inside it"),
                               WordButton::Style::Link);
    connect(add, &QAbstractButton::clicked, this, [this, count] {
        Tree spring = Tree::object();
        spring.set("name", count == 0 ? "outer" : count == 1 ? "inner" : "third");
        spring.set("loads", Tree(Tree::List{Tree::object()}));
        m_document.edit("springs[" + std::to_string(count) + "]", spring, tr("Add a spring"));
    });
    flow.addRow(add);
}

void FiguresPanel::refresh() {
    if (signature() != m_signature) {
        // Not while the keyboard's own event is being worked on: the box that sent it would go.
        const QWidget* focus = QApplication::focusWidget();
        const QWidget* box = focus ? focus->parentWidget() : nullptr;
        const std::string path = box ? box->objectName().toStdString() : std::string();
        const bool ours = focus && isAncestorOf(focus);
        rebuild();
        if (ours && !path.empty())
            for (auto* editor : m_editors)
                if (editor->field().path == path)
                    editor->focus();
        return;
    }
    const Tree& tree = m_document.tree();
    refreshLists();
    if (m_open == "load")
        for (const auto& [spring, notes] : m_listNotes) {
            const QStringList words = springWords(tree, m_document.reading(), spring, m_units);
            notes->setText(words.join(QLatin1Char('\n')));
            notes->setVisible(!words.isEmpty());
        }
    for (auto* editor : m_editors) {
        if (m_open == "piece")
            editor->reword(withRack(editor->field(), tree, m_rack, m_units));
        editor->refresh(m_report.get());
    }
    for (auto& group : m_groups) {
        group.header->setSentence(groupSentence(group.id, tree, m_document.job(), m_report.get(), m_units));
        bool needs = false;
        for (const auto& spec : fieldGroups(tree)) {
            if (spec.id != group.id)
                continue;
            QString how;
            for (const auto& field : spec.fields)
                if (field.appliesTo(tree) && (field.path != "load.total" || isPull(tree)))
                    needs = needs || FieldEditor::isNeeded(field, m_document, m_report.get(), &how) ||
                            m_document.problemAt(field.path);
        }
        if (group.id == "load" && !isPull(tree) && !tree.at("load.total"))
            needs = needs || m_document.problemAt("springs") || m_document.job().springs.empty();
        for (const auto& [path, kept] : m_untaken)
            needs = needs || kept.group == group.id;
        group.header->setNeeds(needs);
    }
    tellNotCounted();
}

void FiguresPanel::enter(FieldEditor* editor) {
    for (auto& group : m_groups) {
        if (group.id != m_open)
            continue;
        MeasureCard* card = editor->field().how.isEmpty()
                                ? nullptr
                                : new MeasureCard(editor->field().sketch, editor->field().how);
        group.flow->openCard(editor->box(), card);
        QTimer::singleShot(0, editor->box(), [this, box = editor->box(), body = group.body] {
            const int top = box->mapTo(m_column, QPoint(0, 0)).y();
            Q_UNUSED(body);
            m_scroll->ensureVisible(0, top + box->height() + Look::now().px(100), 0, 0);
            m_scroll->ensureVisible(0, top, 0, 0);
        });
    }
    editor->refresh(m_report.get());
    Q_EMIT fieldEntered(editor->field().part, editor->field().index);
}

void FiguresPanel::exit(FieldEditor* editor) {
    for (auto& group : m_groups)
        if (group.id == m_open)
            group.flow->openCard(nullptr, nullptr);
    editor->refresh(m_report.get());
    Q_EMIT fieldEntered(PlanPart::None, 0);
}

void FiguresPanel::openField(const std::string& path, bool takeKeyboard) {
    const std::string group = groupOf(m_document.tree(), path);
    if (group.empty())
        return;
    openGroup(group);
    // A field of a list stands in a row that may be closed.
    for (const auto& list : partLists(m_document.tree(), group, m_units))
        for (const auto& row : list.rows)
            for (const auto& field : row.fields)
                if (field.path == path)
                    openRow(row.path);
    for (auto* editor : m_editors) {
        if (editor->field().path != path)
            continue;
        if (takeKeyboard)
            editor->focus();
        else
            m_scroll->ensureWidgetVisible(editor->box(), 0, 24);
    }
}

void FiguresPanel::openPart(PlanPart part, std::size_t row) {
    if (const std::string path = rowOf(part, row); !path.empty())
        return openRow(path);
    const Tree& tree = m_document.tree();
    for (const auto& group : fieldGroups(tree))
        for (const auto& field : group.fields)
            if (field.part == part && field.appliesTo(tree) && field.kind != FieldKind::Choice &&
                field.path != "stations.count" && field.path != "plate.thickness" &&
                field.path != "screw.thread" && field.path != "plate.bore_thread") {
                openField(field.path, false);
                return;
            }
}

} // namespace pw::gui
