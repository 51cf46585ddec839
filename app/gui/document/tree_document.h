#pragma once

#include "core/jobfile/tree.h"
#include "core/units/format.h"
#include "core/util/result.h"

#include <optional>
#include <QObject>
#include <QString>
#include <QUndoStack>
#include <string>

namespace pw::engine {
struct Report;
}

namespace pw::gui {

/// Something that is edited figure by figure and kept as it was typed: a job, or the rack. The tree is the
/// truth; what it means is worked out anew after every edit by who derives from this.
class TreeDocument : public QObject {
    Q_OBJECT

public:
    explicit TreeDocument(QObject* parent = nullptr) : QObject(parent) {}

    const jobfile::Tree& tree() const { return m_tree; }
    QUndoStack& undoStack() { return m_undo; }
    const QUndoStack& undoStack() const { return m_undo; }

    /// Grows with every change; tells answers for an older state from those for this one.
    quint64 revision() const { return m_revision; }

    /// Puts a value in (null takes it out). Edits of the same path in one gesture (a drag, a spell of typing)
    /// are one step of undo; gesture 0 is a step of its own.
    void edit(const std::string& path, jobfile::Tree value, const QString& label, int gesture = 0);
    /// Any change at all as one step. `key` says what was changed, for merging within a gesture.
    void replace(jobfile::Tree after, const QString& label, const std::string& key = {}, int gesture = 0);
    /// A number for a new gesture.
    int newGesture() { return ++m_gesture; }

    /// What the reader would object to in this figure if it stood there; nothing when it would be understood.
    std::optional<QString> objection(const std::string& path, const jobfile::Tree& value) const;
    /// The same when the whole looked like `trial`.
    std::optional<QString> objectionTo(const jobfile::Tree& trial, const std::string& path) const;
    /// What the reader objects to at this path now.
    std::optional<QString> problemAt(const std::string& path) const;
    /// What counts when the figure at `path` is left out, as it would be typed; empty when nothing does.
    virtual QString assumedAt(const std::string& path, const engine::Report* report,
                              units::System system) const;

Q_SIGNALS:
    void changed();
    /// Another tree altogether is on its way: what was typed into boxes and not taken yet belonged to this
    /// one.
    void replaced();

protected:
    /// The tree is another one now.
    virtual void read() = 0;
    virtual const util::Problems& problems() const = 0;
    virtual util::Problems problemsIn(const jobfile::Tree& tree) const = 0;

    void setTree(const jobfile::Tree& tree);
    /// Within a gesture that may go on; false for a step of its own and for undo and redo.
    bool isInGesture() const { return m_inGesture; }

private:
    friend class EditCommand;

    jobfile::Tree m_tree;
    QUndoStack m_undo;
    quint64 m_revision = 0;
    int m_gesture = 0;
    bool m_inGesture = false;
};

} // namespace pw::gui
