#pragma once

#include "app/gui/document/checker.h"
#include "app/gui/document/document.h"
#include "app/gui/document/ladder_finder.h"
#include "app/gui/document/proposal_finder.h"
#include "app/gui/document/rack_ranker.h"
#include "app/gui/panels/tool_dialog.h"
#include "app/gui/print/outputs.h"
#include "app/gui/questions.h"
#include "app/gui/settings/settings.h"

#include <filesystem>
#include <functional>
#include <memory>
#include <QPointer>
#include <QWidget>

class QAction;
class QMenu;
class QSplitter;
class QStackedWidget;

namespace pw::gui {

class FiguresPanel;
class HelpWindow;
class JobFiles;
class NoticeBar;
class LowerStrip;
class RackDesk;
class RackShelf;
struct PrintJob;
class PlanView;
class Preferences;
class ProposeDialog;
class Stage;
class TopBar;
class VerdictPanel;

/// What the window asks of the program without a screen.
struct Engine {
    CheckFunction check;
    WriteFunction write = writeOutput;
    LadderFunction ladder{};
    MendFunction mend{};    ///< empty: nothing is looked for
    ToolFunction tryTool{};    ///< empty: not offered
    ProposeFunction propose{}; ///< empty: not offered
    RankFunction rank = [](const job::Job& job, const rack::RackReading& rack,
                           const engine::RackOptions& options) {
        return engine::rankRack(job, rack, options);
    };
};

/// One window, one job.
class Window : public QWidget {
    Q_OBJECT

public:
    explicit Window(Engine engine, Questions questions = Questions::dialogs());
    ~Window() override;

    /// Opens a file; trouble stands in the bar under the top bar and nothing is lost.
    bool openFile(const std::filesystem::path& file);

    Document& document() { return *m_document; }
    FiguresPanel& figures() { return *m_figures; }
    PlanView& plan() { return *m_plan; }
    LowerStrip& strip();
    VerdictPanel& verdict() { return *m_verdict; }
    NoticeBar& notice() { return *m_notice; }
    NoticeBar& fileNotice() { return *m_fileNotice; }
    NoticeBar& leftBehindNotice() { return *m_leftBehind; }
    JobFiles& files() { return *m_files; }
    QMenu& menu() { return *m_menu; }
    RackDesk& desk() { return *m_desk; }
    TopBar& topBar() { return *m_top; }
    std::shared_ptr<const engine::Report> report() const { return m_report; }
    bool isChecking() const { return m_checker->isBusy(); }

    /// Keeps the job safe in this folder from now on, and offers what was left there.
    void keepIn(const std::filesystem::path& folder);
    void setUnits(units::System system);
    /// Not modal: every choice counts at once, and shows.
    Preferences* showPreferences();
    /// Beside the job, not over it. `where` as in HelpWindow::showPage; empty: about what has the keyboard.
    HelpWindow* showHelp(const QString& where = {});
    /// Offers the walk through a first job.
    void welcome();
    /// Asks whether a tool that exists already would do. Closed, it is deleted.
    ToolDialog* tryTool();
    /// Looks for plates that would do. Closed, it is deleted.
    ProposeDialog* propose();
    void print(bool asTemplate = false);
    void printPreview(bool asTemplate = false);
    bool save();
    bool saveAs();
    void write(Output output);
    /// Several plates, this job's and others', from one piece of steel.
    void writeSeveral();

protected:
    void closeEvent(QCloseEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    bool event(QEvent* event) override;

private:
    void buildMenu();
    void fillSamples(QMenu* menu);
    void applyPreferences();
    bool isAnswered();
    /// Asked about a verdict that may not be made; none: leave it.
    std::optional<bool> anyway(const QString& title);
    std::optional<PrintJob> printed(bool asTemplate);
    /// The piece that the job names, for the sheet.
    std::optional<paper::Offcut> offcut() const;
    void applyLook();
    void layoutColumns();
    void jobChanged();
    void fileChanged();
    void checkNow();
    void rackChanged();
    void askForRack();
    /// The engine's answers with what the rack says about them.
    CheckFunction checkOnPiece() const;
    MendFunction mendOnPiece() const;
    void answer(quint64 revision, std::shared_ptr<const engine::Report> report);
    void mend(const engine::Change& change);
    void startNew(jobfile::Tree tree);
    void fillOutputs(QMenu* menu);
    /// Where to, by way of a dialog; empty: nowhere.
    std::filesystem::path askFile(const OutputKind& kind);
    void tellWritten(const std::filesystem::path& file,
                     const util::Result<std::vector<std::string>>& written);

    Engine m_engine;
    Questions m_questions;
    Document* m_document;
    RackShelf* m_shelf;
    Checker* m_checker;
    std::shared_ptr<const engine::Report> m_report;
    quint64 m_reportRevision = 0;
    units::System m_units;
    bool m_systemDark = false;
    bool m_columnsPlaced = false;
    bool m_applyingLook = false;
    QMenu* m_menu;
    TopBar* m_top;
    NoticeBar *m_notice, *m_fileNotice, *m_leftBehind;
    JobFiles* m_files;
    QAction *m_save = nullptr, *m_revert = nullptr;
    QPointer<Preferences> m_preferences;
    QPointer<HelpWindow> m_help;
    QSplitter* m_splitter;
    FiguresPanel* m_figures;
    QStackedWidget* m_middle; ///< the stage, or the rack in its place
    Stage* m_stage;
    RackDesk* m_desk;
    PlanView* m_plan; ///< on the stage
    VerdictPanel* m_verdict;
};

} // namespace pw::gui
