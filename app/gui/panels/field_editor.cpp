#include "app/gui/panels/field_editor.h"

#include "app/gui/models/field_text.h"
#include "app/gui/widgets/field_flow.h"

#include <QLocale>

namespace pw::gui {

using jobfile::Tree;

namespace {

FieldBox::Mode modeOf(const Field& field) {
    if (field.kind == FieldKind::Choice || field.kind == FieldKind::Flag)
        return FieldBox::Mode::Choice;
    return field.kind == FieldKind::OpenChoice ? FieldBox::Mode::OpenChoice : FieldBox::Mode::Edit;
}

} // namespace

FieldEditor::FieldEditor(TreeDocument& document, Field field, FieldFlow& flow, QObject* parent)
    : QObject(parent), m_document(document), m_field(std::move(field)), m_flow(flow),
      m_box(new FieldBox(modeOf(m_field), m_field.label)) {
    m_box->setObjectName(QString::fromStdString(m_field.path));
    m_box->setChoices({m_field.choices.begin(), m_field.choices.end()});
    connect(m_box, &FieldBox::activated, this, [this] {
        m_gesture = m_document.newGesture();
        Q_EMIT entered(this);
    });
    connect(m_box, &FieldBox::deactivated, this, [this] {
        m_gesture = 0;
        Q_EMIT exited(this);
    });
    connect(m_box, &FieldBox::typed, this, [this](const QString& text) { take(text, false); });
    connect(m_box, &FieldBox::left, this, [this](const QString& text) { take(text, true); });
    connect(m_box, &FieldBox::picked, this, [this](const QString& value) {
        m_trouble.clear();
        const QString old = m_box->value();
        const bool isFlag = m_field.kind == FieldKind::Flag;
        put(value.isEmpty() ? Tree()
            : isFlag        ? Tree(value == QLatin1String("true"))
                            : Tree(value.toStdString()),
            0);
        m_box->setValue(value.isEmpty() ? old : value, true);
        show();
    });
    connect(&m_document, &TreeDocument::replaced, this, &FieldEditor::forget);
    m_flow.addField(m_box, m_field.wide);
}

void FieldEditor::reword(Field field) {
    if (field.choices != m_field.choices)
        m_box->setChoices({field.choices.begin(), field.choices.end()});
    m_field = std::move(field);
}

void FieldEditor::focus() {
    m_box->focusTarget()->setFocus(Qt::OtherFocusReason);
}

void FieldEditor::put(const Tree& value, int gesture) {
    m_document.replace(m_field.with(m_document.tree(), value), m_field.label, m_field.path, gesture);
}

util::Result<Tree> FieldEditor::understood(const QString& text) const {
    // A word of the list was typed: its value in the file is what counts.
    QString words = text;
    for (const auto& [value, shown] : m_field.choices)
        if (shown.compare(text.trimmed(), Qt::CaseInsensitive) == 0)
            words = value;
    auto value = typedValue(words, m_field, m_units, QLocale());
    if (!value)
        return value.problem();
    Tree now = m_field.valueIn(m_document.tree());
    // Left as it was shown: keep what was typed then, to the letter.
    if (!now.isNull() && shownText(&now, m_field, QLocale()) == words)
        return now;
    if (value->isNull() && m_field.keep)
        return util::Problem{
            m_field.path,
            tr("A figure belongs here. To take the whole thing out, use the word Remove.").toStdString()};
    if (!value->isNull() && !(now == *value))
        if (const auto objection =
                m_document.objectionTo(m_field.with(m_document.tree(), *value), m_field.path))
            return util::Problem{m_field.path, objection->toStdString()};
    return value;
}

QString FieldEditor::whyUntaken() const {
    const auto value = understood(m_box->value());
    return value ? tr("Not taken yet. Press Enter in the box to use it.")
                 : QString::fromStdString(value.problem().message);
}

void FieldEditor::take(const QString& text, bool final) {
    const auto value = understood(text);
    m_trouble = value ? QString() : QString::fromStdString(value.problem().message);
    if (value && !(*value == m_field.valueIn(m_document.tree())))
        put(*value, m_gesture);
    m_troubleRevision = m_document.revision();
    m_countedInstead = m_field.valueIn(m_document.tree());
    m_left = final;
    if (final && m_trouble.isEmpty())
        m_box->setValue(shownValue(), true);
    else if (final)
        m_box->keepTyped(text);
    show();
    if (final)
        Q_EMIT settled();
}

QString FieldEditor::untaken() const {
    const bool counts = !m_trouble.isEmpty() && m_field.valueIn(m_document.tree()) == m_countedInstead;
    return counts ? m_box->value() : QString();
}

void FieldEditor::putBack(const QString& text) {
    m_box->setValue(shownValue(), true); // what Escape goes back to
    m_box->keepTyped(text);
    m_trouble = whyUntaken();
    m_troubleRevision = m_document.revision();
    m_countedInstead = m_field.valueIn(m_document.tree());
    show();
}

void FieldEditor::forget() {
    m_trouble.clear();
    m_left = true;
    m_box->setValue(shownValue(), true);
}

QString FieldEditor::shownValue() const {
    const Tree value = m_field.valueIn(m_document.tree());
    return shownText(&value, m_field, QLocale());
}

void FieldEditor::refresh(const engine::Report* report) {
    m_report = report;
    // An edit elsewhere (undo, a drag on the plan) does not throw away what was typed, but an edit or undo of
    // this very figure does: the box shows what counts.
    if (!m_trouble.isEmpty() && m_troubleRevision != m_document.revision() && !m_box->isActive()) {
        m_troubleRevision = m_document.revision();
        if (m_field.valueIn(m_document.tree()) == m_countedInstead)
            m_trouble = whyUntaken();
        else
            forget();
    }
    if (m_trouble.isEmpty())
        m_box->setValue(shownValue());
    show();
}

bool FieldEditor::isNeeded(const Field& field, const TreeDocument& document, const engine::Report* report,
                           QString* how) {
    if (!field.valueIn(document.tree()).isNull())
        return false;
    if (report)
        for (const auto& missing : report->missing)
            if (missing.field == field.path) {
                *how = QString::fromStdString(missing.how);
                return true;
            }
    if (const auto problem = document.problemAt(field.path)) {
        *how = *problem;
        return true;
    }
    return field.needed;
}

bool FieldEditor::wantsAttention() const {
    return m_box->state() == FieldState::Needed || m_box->state() == FieldState::NotUnderstood;
}

void FieldEditor::show() {
    const Tree value = m_field.valueIn(m_document.tree());
    const bool empty = value.isNull();
    m_box->setEcho(m_trouble.isEmpty() ? otherUnit(&value, m_field) : QString());
    QString words;
    bool needed = false;
    if (!m_trouble.isEmpty()) {
        m_box->setState(FieldState::NotUnderstood);
        words = m_trouble;
    } else if (isNeeded(m_field, m_document, m_report, &words)) {
        m_box->setState(FieldState::Needed);
        m_box->setAssumed({});
        // The box already says "needed", the label what; what is left is how to get it.
        const qsizetype stop = words.indexOf(QStringLiteral(". "));
        const QString needs = QString::fromStdString(say("Needed: %1.")).section(QLatin1Char('%'), 0, 0);
        if (words.startsWith(needs) && stop > 0)
            words = words.mid(stop + 2);
        if (words.isEmpty())
            words = m_field.how;
        needed = true;
    } else if (empty) {
        QString assumed = m_document.assumedAt(m_field.path, m_report, m_units);
        if (assumed.isEmpty())
            assumed = m_field.assumed;
        const bool none = assumed.isEmpty();
        for (const auto& [key, shown] : m_field.choices)
            if (key == assumed)
                assumed = shown;
        m_box->setAssumed(assumed);
        m_box->setState(none ? FieldState::Empty : FieldState::Assumed);
    } else if (const auto problem = m_document.problemAt(m_field.path)) {
        m_box->setState(FieldState::NotUnderstood);
        words = *problem;
    } else {
        m_box->setState(FieldState::Typed);
    }
    if (words.isEmpty())
        words = m_field.remark;
    // While the measuring card is open it already says how to measure.
    if (needed && m_box->isActive())
        words.clear();
    if (m_flow.noteOf(m_box) != words)
        m_flow.setNote(m_box, words, needed);
    m_box->setSpoken(words.isEmpty() ? m_field.how : words);
}

} // namespace pw::gui
