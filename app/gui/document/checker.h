#pragma once

#include "app/engine/check.h"
#include "app/gui/document/newest_work.h"

#include <functional>
#include <memory>
#include <QObject>
#include <QString>

namespace pw::gui {

using CheckFunction = std::function<engine::Report(const job::Job&, const engine::CheckOptions&)>;
using MendFunction = std::function<std::vector<engine::Change>(const job::Job&, const engine::Report&,
                                                               const engine::CheckOptions&)>;

/// Checks a copy of the job off the GUI thread. The newest question wins.
class Checker : public QObject {
    Q_OBJECT

public:
    /// `mend` may be empty: then nothing is looked for.
    explicit Checker(CheckFunction check, MendFunction mend = {}, QObject* parent = nullptr);

    void ask(const job::Job& job, quint64 revision);
    bool isBusy() const { return m_work.isBusy(); }

Q_SIGNALS:
    /// Twice for a verdict that does not hold: at once, and again with what would change it.
    void answered(quint64 revision, std::shared_ptr<const engine::Report> report);
    /// The check threw: a bug, told in words.
    void failed(quint64 revision, const QString& what);
    /// As NewestWork's.
    void slow(double done, const QString& what);
    void foretold(const QString& words);

private:
    CheckFunction m_check;
    MendFunction m_mend;
    quint64 m_revision = 0; ///< asked for last
    NewestWork m_work;      // last: its thread asks the functions
};

} // namespace pw::gui
