#pragma once

#include "app/gui/document/document.h"
#include "app/gui/document/job_keeper.h"
#include "app/gui/questions.h"

#include <filesystem>
#include <memory>
#include <QFileSystemWatcher>
#include <QObject>
#include <vector>

class QMenu;
class QWidget;

namespace pw::gui {

class NoticeBar;

/// All that passes between the job in the window and the files it comes from, and what the person is told and
/// asked about it. Trouble stands in a bar, and no bar loses anything when it is closed.
class JobFiles : public QObject {
    Q_OBJECT

public:
    /// Bars under the top bar: one for what went wrong, one for what became of the file, one for jobs left
    /// behind. They may all have something to say at once.
    struct Bars {
        NoticeBar *trouble, *file, *leftBehind;
    };

    JobFiles(Document& document, Questions& questions, Bars bars, QWidget* window);

    /// From now on the job is kept safe in this folder, and what was left there is offered.
    void keepIn(const std::filesystem::path& folder);
    JobKeeper* keeper() const { return m_keeper.get(); }

    /// The caller has asked maybeSave() where there is something to lose.
    bool open(const std::filesystem::path& file);
    bool save();
    bool saveAs();
    /// Back to what the file holds; a step that can be undone.
    void revert();
    /// May the job in the window go? Asks when it has changes.
    bool maybeSave();
    /// The window closes and the person has agreed.
    void close();
    /// Looks whether someone else wrote the file.
    void look();

    /// The last ten that are still there.
    void fillRecent(QMenu* menu);

Q_SIGNALS:
    /// Another job stands in the window.
    void opened();

private:
    void fileChanged();
    void finishTyping();
    bool writeTo(const std::filesystem::path& file);
    void tellOnDisk(Document::OnDisk now);
    void refuseToOverwrite();
    void offerLeftBehind();
    void takeBack(const KeptJob& kept);
    QString fileName() const;

    Document& m_document;
    Questions& m_questions;
    Bars m_bars;
    QWidget* m_window;
    std::unique_ptr<JobKeeper> m_keeper;
    QFileSystemWatcher m_watcher;
    Document::OnDisk m_told = Document::OnDisk::Same;
    std::vector<KeptJob> m_left;
};

} // namespace pw::gui
