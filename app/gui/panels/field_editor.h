#pragma once

#include "app/engine/report.h"
#include "app/gui/document/tree_document.h"
#include "app/gui/models/fields.h"
#include "app/gui/widgets/field_box.h"

namespace pw::gui {

class FieldFlow;

/// One figure of the job in a box: shows what the document has, and puts into the document what was
/// understood. What was not understood stays in the box as typed; the last good value still counts.
class FieldEditor : public QObject {
    Q_OBJECT

public:
    FieldEditor(TreeDocument& document, Field field, FieldFlow& flow, QObject* parent);

    const Field& field() const { return m_field; }
    FieldBox* box() const { return m_box; }
    void setUnits(units::System system) { m_units = system; }
    /// What follows for this figure, under its box as long as nothing is wrong with it; seen on the next
    /// refresh.
    void setRemark(const QString& words) { m_field.remark = words; }
    /// Brings the box up to date with the document and the report (may be null).
    void refresh(const engine::Report* report);
    /// Needed and not there, or typed and not understood.
    bool wantsAttention() const;
    /// The same field, with other choices or another remark; shown at the next refresh().
    void reword(Field field);
    void focus();
    /// What was typed and is not in the document, as it was not understood or does not go with the rest.
    /// Empty when the document has another figure since.
    QString untaken() const;
    /// Typed to the end, and the keyboard away or Enter pressed.
    bool isLeft() const { return m_left; }
    /// Puts such a text into a new box for the same figure.
    void putBack(const QString& text);

    static bool isNeeded(const Field& field, const TreeDocument& document, const engine::Report* report,
                         QString* how);

Q_SIGNALS:
    void entered(FieldEditor* editor);
    void exited(FieldEditor* editor);
    /// The box was left, or stands as the document has it again.
    void settled();

private:
    /// The text as a value for the document; the problem when it is not understood or does not go with the
    /// rest.
    util::Result<jobfile::Tree> understood(const QString& text) const;
    /// Why what stands in the box is not in the document, though it was left.
    QString whyUntaken() const;
    void take(const QString& text, bool final);
    void forget();
    void put(const jobfile::Tree& value, int gesture);
    QString shownValue() const;
    void show();

    TreeDocument& m_document;
    Field m_field;
    FieldFlow& m_flow;
    FieldBox* m_box;
    units::System m_units = units::System::Metric;
    int m_gesture = 0;
    QString m_trouble; ///< why what stands in the box is not in the document
    bool m_left = true;
    quint64 m_troubleRevision = 0;
    jobfile::Tree m_countedInstead; ///< what the document had when that was found
    const engine::Report* m_report = nullptr;
};

} // namespace pw::gui
