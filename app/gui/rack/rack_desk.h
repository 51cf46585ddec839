#pragma once

#include "app/gui/document/rack_ranker.h"
#include "app/gui/document/rack_shelf.h"
#include "app/gui/models/rack_rows.h"
#include "app/gui/questions.h"

#include <optional>
#include <QPointer>

namespace pw::gui {

class RackPage;

/// All that happens on the rack page: it is opened and left, pieces are ranked, put in, changed, taken off,
/// laid under the plan and cut. The rack has a history of its own; while its page is open, undo goes to
/// whichever of job and rack was changed last.
class RackDesk : public QObject {
    Q_OBJECT

public:
    RackDesk(Document& document, RackShelf& shelf, RankFunction rank, Questions& questions, QWidget* window);

    RackPage& page() { return *m_page; }
    bool isOpen() const { return m_open; }
    bool isRanking() const { return m_ranker->isBusy(); }
    const RankedRack& ranked() const { return m_ranked; }

    void open();
    void close();
    void toggle() { m_open ? close() : open(); }
    void setUnits(units::System system);
    void setSnap(double mm);
    /// What undo and redo are about now.
    QUndoStack& history();
    /// The window closes: is all of it in files, or may it go?
    bool maybeLeave();

    // What the page's words do.
    void add();
    void change(std::size_t row);
    void lay(std::size_t row);
    void cut(std::size_t row);

Q_SIGNALS:
    void openChanged(bool open);
    void historyChanged();
    /// For the bar of the window: what became of the rack's file while its page is not open.
    void said(const QString& words);

private:
    void shelfChanged();
    void refresh();
    void showWays();
    void showFileWords();
    void rank();
    void fileChanged(RackDocument* rack);
    void followName();
    void watchHistory();
    bool begin();
    void useRack(const std::filesystem::path& file);
    void takeOutline(const util::Result<jobfile::Tree>& points, const QString& label);
    void askPoints();
    void askSides();
    void leaveEditor();
    const RackRow* rowOf(std::size_t row) const;

    Document& m_document;
    RackShelf& m_shelf;
    Questions& m_questions;
    QWidget* m_window;
    RackPage* m_page;
    RackRanker* m_ranker;
    RankedRack m_ranked;
    units::System m_units = units::System::Metric;
    engine::Prefer m_prefer = engine::Prefer::LeastWaste;
    bool m_open = false, m_rackLast = true;
    QPointer<RackDocument> m_watched;
    std::optional<job::Job> m_asked; ///< as far as the ranking hangs on it
    std::shared_ptr<const rack::RackReading> m_askedRack;
    engine::Prefer m_askedPrefer = engine::Prefer::LeastWaste;
    std::size_t m_editedRows = 0; ///< rows of the rack when the editor was opened
    std::size_t m_underRow = 0;
    QString m_told;          ///< trouble with the file that stands in the page's bar
    std::string m_underName; ///< of the piece under the plan, as the rack last had it
};

} // namespace pw::gui
