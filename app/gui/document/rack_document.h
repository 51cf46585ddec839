#pragma once

#include "app/gui/document/tree_document.h"
#include "core/rack/read_rack.h"

#include <filesystem>
#include <memory>
#include <QTimer>

namespace pw::gui {

/// One rack file: the pile as it was typed, with a history of its own apart from the job's. It saves itself:
/// every finished edit is in the file before the next one begins, an edit that may go on (typing, a drag) a
/// moment after it rests. What the file held before this sitting stays beside it as NAME~. A file that
/// somebody else has written since is never written over without being asked.
class RackDocument : public TreeDocument {
    Q_OBJECT

public:
    /// How long an edit must rest before it is written, when it may still go on.
    static constexpr int kRestMs = 600;

    explicit RackDocument(std::filesystem::path file, QObject* parent = nullptr);
    ~RackDocument() override; ///< writes what is not written yet

    /// Takes what the file holds; a file that is no rack is a problem, and nothing here may write it.
    util::Status open();
    /// A new, empty rack. Refused where there is a file already.
    util::Status begin();

    const std::filesystem::path& path() const { return m_path; }
    QString fileName() const;
    std::shared_ptr<const rack::RackReading> reading() const { return m_reading; }

    // --- Edits. `row` counts in `offcuts`, pieces with wrong figures and all.
    std::size_t rowCount() const;
    const jobfile::Tree* piece(std::size_t row) const;
    static std::string pathOf(std::size_t row) { return "offcuts[" + std::to_string(row) + "]"; }
    void add(jobfile::Tree piece, const QString& label);
    /// The same again behind it, under a name of its own.
    void copy(std::size_t row);
    void takeOff(std::size_t row);
    /// A name that no piece has: "old door", "old door 2".
    std::string freeName(const QString& wanted) const;

    // --- The file
    bool isWritten() const { return m_written; }
    /// Why the last edits are not in the file; empty when they are, or are about to be.
    const QString& trouble() const { return m_trouble; }
    enum class Trouble { None, CannotWrite, Foreign, Gone };
    Trouble troubleKind() const { return m_kind; }
    /// Now, not in a moment. `over`: also over what somebody else has written, which stays beside it as
    /// NAME~.
    bool write(bool over = false);
    /// Looks whether somebody else has written the file. Then what it holds now is taken as one more step,
    /// so that undo goes back; unless there is something here that is not written yet: that is trouble.
    /// True when it was taken.
    bool look();
    /// What somebody else has written instead of what stands here; one step.
    bool takeTheirs();

Q_SIGNALS:
    /// Written, or not.
    void fileChanged();

protected:
    void read() override;
    const util::Problems& problems() const override { return m_problems; }
    util::Problems problemsIn(const jobfile::Tree& tree) const override;

private:
    bool fail(Trouble kind, const QString& words);
    void written(const std::string& text);

    std::filesystem::path m_path;
    std::shared_ptr<const rack::RackReading> m_reading;
    util::Problems m_problems;
    jobfile::Tree m_opened;   ///< as the file was when this sitting began ...
    std::string m_openedText; ///< ... and its very letters: an undo of everything brings them back
    std::string m_onDisk;     ///< as last read or written here
    QTimer m_rest;
    QString m_trouble;
    Trouble m_kind = Trouble::None;
    bool m_written = true;
    bool m_kept = false; ///< what was there before this sitting stands beside it
    bool m_taking = false;
};

} // namespace pw::gui
