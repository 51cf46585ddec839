#include "app/gui/window.h"

#include "app/engine/mend.h"
#include "app/engine/rack.h"
#include "app/gui/document/rack_shelf.h"
#include "app/gui/help/help_pages.h"
#include "app/gui/help/help_window.h"
#include "app/gui/job_files.h"
#include "app/gui/models/missing_order.h"
#include "app/gui/models/new_job.h"
#include "app/gui/panels/figures_panel.h"
#include "app/gui/panels/lower_strip.h"
#include "app/gui/panels/notice_bar.h"
#include "app/gui/panels/preferences.h"
#include "app/gui/panels/stage.h"
#include "app/gui/panels/top_bar.h"
#include "app/gui/panels/verdict_panel.h"
#include "app/gui/rack/rack_desk.h"
#include "app/gui/rack/rack_page.h"
#include "app/gui/samples.h"
#include "app/gui/views/plan_view.h"
#include "app/gui/views/section_view.h"
#include "app/gui/widgets/check_row.h"
#include "app/gui/widgets/field_box.h"
#include "app/gui/widgets/look.h"
#include "app/gui/widgets/word_button.h"

#include <QAction>
#include <QApplication>
#include <QCloseEvent>
#include <QDragEnterEvent>
#include <QDropEvent>
#include <QFileInfo>
#include <QGuiApplication>
#include <QKeySequence>
#include <QMenu>
#include <QMimeData>
#include <QScreen>
#include <QSplitter>
#include <QStackedWidget>
#include <QTimer>
#include <QUrl>
#include <QVBoxLayout>

namespace pw::gui {

using jobfile::Tree;

namespace {

void dressMenus(QWidget& window) {
    for (auto* menu : window.findChildren<QMenu*>())
        dress(*menu);
}

} // namespace

Window::Window(Engine engine, Questions questions)
    : m_engine(std::move(engine)), m_questions(std::move(questions)), m_document(new Document(this)),
      m_shelf(new RackShelf(*m_document, this)), m_checker(new Checker(checkOnPiece(), mendOnPiece(), this)),
      m_units(settings::unitSystem()),
      m_systemDark(QApplication::palette().color(QPalette::Window).lightness() < 128),
      m_menu(new QMenu(this)), m_splitter(new QSplitter(Qt::Horizontal, this)) {
    setAcceptDrops(true);
    setWindowTitle(QStringLiteral("Platewright"));
    applyLook();
    m_document->startNew(newJob(NewJob::CompressRing, m_units));

    m_top = new TopBar(m_menu, this);
    m_leftBehind = new NoticeBar(this);
    m_fileNotice = new NoticeBar(this);
    m_notice = new NoticeBar(this);
    m_files = new JobFiles(*m_document, m_questions, {m_notice, m_fileNotice, m_leftBehind}, this);
    m_figures = new FiguresPanel(*m_document, this);
    m_stage = new Stage(*m_document, m_engine.ladder, this);
    m_plan = &m_stage->plan();
    m_desk = new RackDesk(*m_document, *m_shelf, m_engine.rank, m_questions, this);
    m_middle = new QStackedWidget(this);
    m_middle->addWidget(m_stage);
    m_middle->addWidget(&m_desk->page());
    m_verdict = new VerdictPanel(this);

    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_top);
    column->addWidget(m_leftBehind);
    column->addWidget(m_fileNotice);
    column->addWidget(m_notice);
    column->addWidget(m_splitter, 1);
    m_splitter->addWidget(m_figures);
    m_splitter->addWidget(m_middle);
    m_splitter->addWidget(m_verdict);
    m_splitter->setHandleWidth(1);
    m_splitter->setChildrenCollapsible(false);
    m_splitter->setStretchFactor(0, 0);
    m_splitter->setStretchFactor(1, 1);
    m_splitter->setStretchFactor(2, 0);
    connect(m_splitter, &QSplitter::splitterMoved, this, [this] { m_columnsPlaced = true; });

    connect(m_shelf, &RackShelf::changed, this, &Window::rackChanged);
    connect(m_document, &Document::changed, this, &Window::jobChanged);
    connect(m_document, &Document::fileChanged, this, &Window::fileChanged);
    connect(m_desk, &RackDesk::historyChanged, this, &Window::fileChanged);
    connect(m_desk, &RackDesk::openChanged, this, [this](bool open) {
        m_middle->setCurrentIndex(open ? 1 : 0);
        m_top->setRackOpen(open);
        if (!open)
            m_plan->setFocus(Qt::OtherFocusReason);
    });
    connect(m_desk, &RackDesk::said, m_notice, &NoticeBar::say);
    connect(m_checker, &Checker::answered, this, &Window::answer);
    connect(m_files, &JobFiles::opened, this, [this] {
        m_plan->fit();
        // In the figures it stands where it was typed; one that comes with a file is in nobody's sight.
        if (!m_shelf->rackTrouble().isEmpty() && !m_shelf->isOutside())
            m_notice->say(m_shelf->rackTrouble());
        askForRack();
    });
    m_plan->setBusyTest([this] { return m_checker->isBusy(); });
    connect(m_checker, &Checker::answered, m_plan, &PlanView::takePending);
    connect(m_checker, &Checker::failed, m_plan, &PlanView::takePending);
    connect(m_checker, &Checker::slow, m_verdict, &VerdictPanel::setBusy);
    connect(m_checker, &Checker::foretold, m_verdict, &VerdictPanel::setAhead);
    connect(m_checker, &Checker::failed, this, [this](quint64 revision, const QString& what) {
        if (revision == m_document->revision())
            m_verdict->setFailure(what);
    });
    connect(m_top, &TopBar::undo, this, [this] { m_desk->history().undo(); });
    connect(m_top, &TopBar::redo, this, [this] { m_desk->history().redo(); });
    connect(m_top, &TopBar::rack, m_desk, &RackDesk::toggle);
    connect(m_top, &TopBar::unitsChosen, this, &Window::setUnits);
    connect(m_top, &TopBar::cutFile, this, [this] { write(Output::CutSize); });
    connect(m_top, &TopBar::solid, this, [this] { write(Output::Plate); });
    connect(m_plan, &PlanView::picked, this,
            [this](PlanPart part, std::size_t row) { m_figures->openPart(part, row); });
    connect(m_plan, &PlanView::added, this, [this](const std::string& row) { m_figures->openRow(row); });
    connect(m_figures, &FiguresPanel::fieldEntered, m_plan, &PlanView::light);
    connect(m_verdict, &VerdictPanel::checkPicked, m_plan, &PlanView::showPlaces);
    connect(m_verdict, &VerdictPanel::checkOpened, this, [this](const std::string& id) {
        const CheckPlace place = placeOfCheck(id);
        m_plan->light(place.part);
        strip().section()->light(place);
    });
    connect(m_verdict, &VerdictPanel::mendAsked, this, &Window::mend);
    m_verdict->setProposes(m_engine.propose != nullptr);
    connect(m_verdict, &VerdictPanel::proposeAsked, this, &Window::propose);
    connect(m_figures, &FiguresPanel::notCountedChanged, m_verdict,
            [this](const std::vector<FiguresPanel::NotCounted>& figures) {
                const FiguresPanel::NotCounted first =
                    figures.empty() ? FiguresPanel::NotCounted() : figures.front();
                m_verdict->setNotCounted(first.label, first.path, figures.size());
            });
    connect(m_verdict, &VerdictPanel::fieldAsked, this,
            [this](const std::string& path) { m_figures->openField(path, true); });
    buildMenu();
    setTabOrder(m_top, m_figures);
    setTabOrder(m_figures, m_middle);
    setTabOrder(m_middle, m_verdict);

    m_top->setUnits(m_units);
    m_figures->setUnits(m_units);
    m_stage->setUnits(m_units);
    m_verdict->setUnits(m_units);
    m_desk->setUnits(m_units);
    m_plan->setSnap(settings::snapStepMm(m_units));
    m_desk->setSnap(settings::snapStepMm(m_units));
    const QSize screen = QGuiApplication::primaryScreen()->availableSize();
    resize(QSize(1366, 768).boundedTo(screen));
    restoreGeometry(settings::windowGeometry());
    if (const auto state = settings::splitterState(); !state.isEmpty())
        m_columnsPlaced = m_splitter->restoreState(state);
    jobChanged();
    fileChanged();
    m_plan->setFocus(Qt::OtherFocusReason);
}

Window::~Window() {
    delete m_checker; // its thread asks the shelf
    // The undo stack says that it is clean when it goes: that is not the job being saved.
    m_document->blockSignals(true);
    m_document->undoStack().blockSignals(true);
}

LowerStrip& Window::strip() {
    return m_stage->strip();
}

// --- Look

void Window::applyLook() {
    m_applyingLook = true;
    const auto chosen = settings::colours();
    const bool dark =
        chosen == settings::Colours::Dark || (chosen == settings::Colours::Follow && m_systemDark);
    const double scale = Look::scaleOfUserFont(QApplication::font()) * settings::textSize();
    if (settings::lessMotion())
        Look::now().setLessMotion(true);
    else if (m_preferences)
        Look::now().setLessMotion(false);
    Look::now().set(dark ? Tone::Dark : Tone::Light, scale);
    setPalette(Look::now().colours().forQt());
    setFont(Look::now().font(Type::Button));
    dressMenus(*this);
    m_applyingLook = false;
    if (!m_columnsPlaced)
        layoutColumns();
    update();
}

void Window::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::ApplicationPaletteChange && !m_applyingLook) {
        m_systemDark = QApplication::palette().color(QPalette::Window).lightness() < 128;
        applyLook();
    } else if (event->type() == QEvent::ApplicationFontChange && !m_applyingLook) {
        applyLook();
    }
}

void Window::resizeEvent(QResizeEvent*) {
    if (!m_columnsPlaced)
        layoutColumns();
}

void Window::layoutColumns() {
    if (m_splitter->count() < 3)
        return;
    // The sides keep their share of a 1366 px window between what they need and 420 px; the plan takes the
    // rest. Very large type may not push the plan out of the window.
    const auto side = [this](double design) {
        const double share = design * width() / 1366.0;
        const double wanted =
            std::clamp(share, design * 0.9, std::max(420.0, design)) * std::max(1.0, Look::now().scale());
        return static_cast<int>(std::min(wanted, std::max(width() * 0.33, design * 0.9)));
    };
    const int left = side(316), right = side(330);
    m_splitter->setSizes({left, std::max(width() - left - right - 2, 100), right});
}

// --- Menu

void Window::buildMenu() {
    const auto add = [this](QMenu* menu, const QString& words, const QKeySequence& keys, auto&& slot) {
        QAction* action = menu->addAction(words);
        action->setShortcut(keys);
        connect(action, &QAction::triggered, this, slot);
        addAction(action); // a shortcut counts while the menu is closed as well
        return action;
    };
    auto* fresh = m_menu->addMenu(tr("New"));
    add(fresh, tr("Squeeze: disc over a full ring"), QKeySequence::New,
        [this] { startNew(newJob(NewJob::CompressRing, m_units)); });
    add(fresh, tr("Squeeze: bar, two at a time"), {},
        [this] { startNew(newJob(NewJob::CompressBar, m_units)); });
    add(fresh, tr("Pull: plate with bolts"), {}, [this] { startNew(newJob(NewJob::PullBolts, m_units)); });
    add(fresh, tr("Pull: strongback on two legs"), {},
        [this] { startNew(newJob(NewJob::PullStrongback, m_units)); });
    add(m_menu, tr("Open…"), QKeySequence::Open, [this] {
        if (!m_files->maybeSave())
            return;
        const auto file = m_questions.openPath(this);
        if (!file.empty())
            openFile(file);
    });
    auto* recent = m_menu->addMenu(tr("Open again"));
    recent->setToolTipsVisible(true); // the whole path
    connect(m_menu, &QMenu::aboutToShow, recent, [this, recent] { m_files->fillRecent(recent); });
    fillSamples(m_menu->addMenu(tr("Samples")));
    m_menu->addSeparator();
    m_save = add(m_menu, tr("Save"), QKeySequence::Save, [this] { save(); });
    add(m_menu, tr("Save as…"), QKeySequence::SaveAs, [this] { saveAs(); });
    m_revert = add(m_menu, tr("Back to what is saved"), {}, [this] { m_files->revert(); });
    m_menu->addSeparator();
    add(m_menu, tr("Rack"), QKeySequence(Qt::CTRL | Qt::Key_R), [this] { m_desk->toggle(); });
    if (m_engine.tryTool)
        add(m_menu, tr("Try a tool you have…"), {}, [this] { tryTool(); });
    if (m_engine.propose)
        add(m_menu, tr("Propose a plate…"), {}, [this] { propose(); });
    fillOutputs(m_menu->addMenu(tr("Write")));
    add(m_menu, tr("Print preview…"), {}, [this] { printPreview(); });
    add(m_menu, tr("Print…"), QKeySequence::Print, [this] { print(); });
    add(m_menu, tr("Print the paper template…"), {}, [this] { print(true); });
    m_menu->addSeparator();
    auto* undo = new QAction(tr("Undo"), this);
    undo->setShortcut(QKeySequence::Undo);
    connect(undo, &QAction::triggered, this, [this] { m_desk->history().undo(); });
    addAction(undo);
    auto* redo = new QAction(tr("Redo"), this);
    redo->setShortcuts({QKeySequence(QKeySequence::Redo), QKeySequence(Qt::CTRL | Qt::Key_Y)});
    connect(redo, &QAction::triggered, this, [this] { m_desk->history().redo(); });
    addAction(redo);
    add(m_menu, tr("Help"), QKeySequence::HelpContents, [this] { showHelp(); });
    add(m_menu, tr("Preferences…"), QKeySequence::Preferences, [this] { showPreferences(); });
    add(m_menu, tr("Quit"), QKeySequence::Quit, [this] { close(); });
    dressMenus(*this);
}

Preferences* Window::showPreferences() {
    if (!m_preferences) {
        m_preferences = new Preferences(this);
        m_preferences->setAttribute(Qt::WA_DeleteOnClose);
        connect(m_preferences, &Preferences::changed, this, &Window::applyPreferences);
    }
    m_preferences->show();
    m_preferences->raise();
    m_preferences->activateWindow();
    return m_preferences;
}

namespace {

/// What the help has to say about the widget that has the keyboard.
QString helpOn(const QWidget* widget) {
    for (; widget; widget = widget->parentWidget()) {
        if (const auto* row = qobject_cast<const CheckRow*>(widget))
            return helpOnCheck(row->check().id);
        if (const auto* field = qobject_cast<const FieldBox*>(widget))
            return helpOnField(field->objectName().toStdString());
        if (qobject_cast<const PlanView*>(widget))
            return QStringLiteral("window");
    }
    return {};
}

/// The kinds of new job as the help's links name them.
const std::pair<const char*, NewJob> kNewJobs[] = {{"ring", NewJob::CompressRing},
                                                   {"bar", NewJob::CompressBar},
                                                   {"bolts", NewJob::PullBolts},
                                                   {"strongback", NewJob::PullStrongback}};

const std::pair<const char*, PlanView::View> kViews[] = {{"plain", PlanView::View::Plain},
                                                         {"stress", PlanView::View::Stress},
                                                         {"deflection", PlanView::View::Deflection},
                                                         {"fit", PlanView::View::Fit},
                                                         {"bent", PlanView::View::Bent}};

} // namespace

HelpWindow* Window::showHelp(const QString& where) {
    const QString about = where.isEmpty() ? helpOn(QApplication::focusWidget()) : where;
    if (!m_help) {
        m_help = new HelpWindow(this);
        connect(m_help, &HelpWindow::figureAsked, this,
                [this](const std::string& path) { m_figures->openField(path, true); });
        connect(m_help, &HelpWindow::viewAsked, this, [this](const QString& name) {
            for (const auto& [word, view] : kViews)
                if (name == QLatin1String(word))
                    m_plan->setView(view);
        });
        connect(m_help, &HelpWindow::newAsked, this, [this](const QString& name) {
            for (const auto& [word, kind] : kNewJobs)
                if (name == QLatin1String(word))
                    startNew(newJob(kind, m_units));
        });
    }
    if (!about.isEmpty())
        m_help->showPage(about);
    m_help->show();
    m_help->raise();
    m_help->activateWindow();
    return m_help;
}

void Window::welcome() {
    m_notice->ask(
        tr("New here? The help walks through a first job, figure by figure. F1 opens it at any time."),
        {{tr("A first job"), [this] { showHelp(QStringLiteral("first_job")); }}});
}

void Window::applyPreferences() {
    setUnits(settings::unitSystem());
    m_plan->setSnap(settings::snapStepMm(m_units));
    m_desk->setSnap(settings::snapStepMm(m_units));
    const double before = Look::now().scale();
    applyLook();
    if (Look::now().scale() != before) {
        m_columnsPlaced = false;
        layoutColumns();
    }
}

void Window::fillOutputs(QMenu* menu) {
    for (const OutputKind& kind : outputKinds()) {
        if (kind.output == Output::Plate || kind.output == Output::Sheet || kind.output == Output::Text)
            menu->addSeparator();
        connect(menu->addAction(kind.menu), &QAction::triggered, this,
                [this, output = kind.output] { write(output); });
        if (kind.output == Output::Program)
            connect(menu->addAction(tr("Several plates from one piece…")), &QAction::triggered, this,
                    &Window::writeSeveral);
    }
}

void Window::fillSamples(QMenu* menu) {
    for (const auto& sample : samples())
        connect(menu->addAction(sample.title), &QAction::triggered, this, [this, file = sample.file] {
            if (m_files->maybeSave())
                openFile(file.toStdString());
        });
    menu->setEnabled(!menu->isEmpty());
}

// --- Job

void Window::jobChanged() {
    QStringList unknown;
    for (const auto& key : m_document->reading().unknownKeys)
        unknown << QString::fromStdString(key);
    if (!unknown.isEmpty())
        m_notice->say(tr("Not known here and kept as it is: %1.").arg(unknown.join(QStringLiteral(", "))));
    else if (m_notice->words().startsWith(tr("Not known here")))
        m_notice->say({});
    checkNow();
    fileChanged();
}

CheckFunction Window::checkOnPiece() const {
    return
        [check = m_engine.check, shelf = m_shelf](const job::Job& job, const engine::CheckOptions& options) {
            engine::Report report = check(job, options);
            if (const auto rack = shelf->reading(); rack && job.piece)
                if (const auto under = engine::pieceUnder(job, *rack))
                    engine::addStockFit(report, *under);
            return report;
        };
}

MendFunction Window::mendOnPiece() const {
    if (!m_engine.mend)
        return {};
    return [mend = m_engine.mend](const job::Job& job, const engine::Report& report,
                                  const engine::CheckOptions& options) {
        // No other steel or thickness puts the plate where it fits on its piece.
        return report.weakest == "stock.fit" ? std::vector<engine::Change>() : mend(job, report, options);
    };
}

/// Typed or come with a file: a rack outside the job's folder is read when the person says so.
void Window::askForRack() {
    if (m_shelf->isOutside())
        m_notice->ask(m_shelf->rackTrouble(), {{tr("Read this rack"), [this] { m_shelf->allow(); }}});
}

void Window::rackChanged() {
    askForRack();
    m_plan->setPiece(m_shelf->stock());
    strip().setRack(m_shelf->reading());
    m_figures->setRack({m_shelf->reading(), m_shelf->rackTrouble(), m_shelf->pieceTrouble()});
    checkNow();
}

void Window::checkNow() {
    job::Job job = m_document->job();
    // The answer's sentences use the unit the window shows.
    job.preferred = m_units;
    m_checker->ask(job, m_document->revision());
}

void Window::answer(quint64 revision, std::shared_ptr<const engine::Report> report) {
    if (revision != m_document->revision())
        return;
    if (report->grade == verdict::Grade::Incomplete) {
        auto ordered = std::make_shared<engine::Report>(*report);
        orderMissing(*ordered, m_document->tree());
        report = std::move(ordered);
    }
    m_report = std::move(report);
    m_reportRevision = revision;
    m_stage->setReport(m_report);
    m_verdict->setReport(m_report);
    m_figures->setReport(m_report);
}

void Window::fileChanged() {
    const QUndoStack& undo = m_desk->history();
    m_top->setHistory(undo.canUndo(), undo.undoText(), undo.canRedo(), undo.redoText());
    const bool named = !m_document->path().empty();
    if (m_document->isChanged())
        m_top->setFileWords(named ? tr("Changed since saved") : tr("Not saved yet"));
    else
        m_top->setFileWords(named ? tr("Saved") : tr("New job"));
    setWindowTitle(tr("%1[*] - Platewright").arg(m_document->name()));
    setWindowModified(m_document->isChanged());
    m_revert->setEnabled(named && m_document->isChanged());
}

void Window::setUnits(units::System system) {
    if (system == m_units)
        return;
    m_units = system;
    settings::setUnitSystem(system);
    m_plan->setSnap(settings::snapStepMm(system));
    if (m_preferences)
        m_preferences->refresh();
    m_top->setUnits(system);
    m_figures->setUnits(system);
    m_stage->setUnits(system);
    m_verdict->setUnits(system);
    m_desk->setUnits(system);
    m_desk->setSnap(settings::snapStepMm(system));
    checkNow();
}

void Window::mend(const engine::Change& change) {
    m_document->edit(change.field, engine::valueOf(change), QString::fromStdString(change.what));
}

void Window::startNew(Tree tree) {
    if (!m_files->maybeSave())
        return;
    m_notice->say({});
    m_document->startNew(std::move(tree));
    m_plan->fit();
    m_figures->openGroup("stations");
}

void Window::keepIn(const std::filesystem::path& folder) {
    m_files->keepIn(folder);
}

bool Window::openFile(const std::filesystem::path& file) {
    return m_files->open(file);
}

bool Window::save() {
    return m_files->save();
}

bool Window::saveAs() {
    return m_files->saveAs();
}

// --- Events

bool Window::event(QEvent* event) {
    if (event->type() == QEvent::WindowActivate) {
        m_files->look();
        m_shelf->look();
    }
    return QWidget::event(event);
}

void Window::closeEvent(QCloseEvent* event) {
    if (!m_desk->maybeLeave() || !m_files->maybeSave()) {
        event->ignore();
        return;
    }
    m_files->close();
    settings::setWindowGeometry(saveGeometry());
    if (m_columnsPlaced)
        settings::setSplitterState(m_splitter->saveState());
    m_stage->remember();
    event->accept();
}

void Window::dragEnterEvent(QDragEnterEvent* event) {
    if (event->mimeData()->hasUrls() && event->mimeData()->urls().first().isLocalFile())
        event->acceptProposedAction();
}

void Window::dropEvent(QDropEvent* event) {
    const QString file = event->mimeData()->urls().first().toLocalFile();
    event->acceptProposedAction();
    // Asking would hold up the program the file was dragged from.
    QTimer::singleShot(0, this, [this, file] {
        if (m_files->maybeSave())
            openFile(file.toStdString());
    });
}

} // namespace pw::gui
