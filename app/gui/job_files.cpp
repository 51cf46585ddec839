#include "app/gui/job_files.h"

#include "app/gui/panels/notice_bar.h"
#include "app/gui/settings/settings.h"
#include "app/gui/widgets/plain_tip.h"

#include <algorithm>
#include <QApplication>
#include <QDir>
#include <QFileInfo>
#include <QLocale>
#include <QMenu>
#include <QTimer>
#include <QWidget>

namespace pw::gui {

namespace {

QString nameOf(const std::filesystem::path& file) {
    return QString::fromStdString(file.filename().string());
}

/// The whole path, so that it still leads there when the program stands elsewhere.
std::filesystem::path whole(const std::filesystem::path& file) {
    std::error_code error;
    const auto path = std::filesystem::absolute(file, error);
    return error ? file : path.lexically_normal();
}

void remember(const std::filesystem::path& file) {
    const QString path = QString::fromStdString(file.string());
    settings::setLastFolder(QFileInfo(path).absolutePath());
    settings::addRecentJob(path);
}

} // namespace

JobFiles::JobFiles(Document& document, Questions& questions, Bars bars, QWidget* window)
    : QObject(window), m_document(document), m_questions(questions), m_bars(bars), m_window(window) {
    connect(&m_document, &Document::fileChanged, this, &JobFiles::fileChanged);
    // A program that writes aside and renames takes a moment to be done.
    connect(&m_watcher, &QFileSystemWatcher::fileChanged, this, [this] {
        constexpr int kSettleMs = 200;
        QTimer::singleShot(kSettleMs, this, &JobFiles::look);
    });
}

QString JobFiles::fileName() const {
    return nameOf(m_document.path());
}

// --- Keeping

void JobFiles::keepIn(const std::filesystem::path& folder) {
    m_keeper = std::make_unique<JobKeeper>(m_document, folder);
    connect(m_keeper.get(), &JobKeeper::trouble, this, [this](const QString& what) {
        if (!what.isEmpty())
            m_bars.trouble->say(
                tr("Unsaved changes cannot be kept safe just now: %1. Save the job soon.").arg(what));
        else if (m_bars.trouble->words().startsWith(tr("Unsaved changes cannot be kept safe")))
            m_bars.trouble->say({});
    });
    m_left = m_keeper->journal().leftBehind();
    // Saved in the same moment in which the program stopped: there is nothing to take back.
    std::erase_if(m_left, [](const KeptJob& kept) {
        const auto saved = kept.jobFile.empty() ? util::Result<jobfile::Tree>(util::Problem{})
                                                : jobfile::loadTree(kept.jobFile);
        return saved && *saved == kept.tree && Journal::discard(kept);
    });
    offerLeftBehind();
}

void JobFiles::offerLeftBehind() {
    if (m_left.empty()) {
        m_bars.leftBehind->say({});
        return;
    }
    const KeptJob& kept = m_left.front();
    const QString name = kept.name().isEmpty() ? tr("A new job") : tr("“%1”").arg(kept.name());
    QString words = tr("%1 has changes that were not saved when the program stopped, %2.")
                        .arg(name, QLocale().toString(kept.written.toLocalTime(), QLocale::ShortFormat));
    const QFileInfo file(QString::fromStdString(kept.jobFile.string()));
    if (!kept.jobFile.empty() && file.exists() && file.lastModified() > kept.written)
        words += QLatin1Char(' ') + tr("Its file was saved after that.");
    if (m_left.size() > 1)
        words += QLatin1Char(' ') + tr("(%1 more after this one.)").arg(m_left.size() - 1);
    m_bars.leftBehind->ask(words, {{tr("Take it back"), [this] { takeBack(m_left.front()); }},
                                   {tr("Throw it away"), [this] {
                                        Journal::discard(m_left.front());
                                        m_left.erase(m_left.begin());
                                        offerLeftBehind();
                                    }}});
}

void JobFiles::takeBack(const KeptJob& kept) {
    if (!maybeSave()) {
        offerLeftBehind();
        return;
    }
    if (m_keeper->takeBack(kept)) {
        m_bars.trouble->say({});
        Q_EMIT opened();
    } else {
        m_bars.trouble->say(tr("Another window has taken it already."));
    }
    m_left.erase(m_left.begin());
    offerLeftBehind();
}

// --- Open and save

bool JobFiles::open(const std::filesystem::path& file) {
    const auto path = whole(file);
    const auto opened = m_document.open(path);
    if (!opened) {
        m_bars.trouble->say(tr("%1 could not be opened: %2")
                                .arg(nameOf(file), QString::fromStdString(opened.problem().message)));
        return false;
    }
    if (m_document.reading().unknownKeys.empty())
        m_bars.trouble->say({});
    remember(path);
    if (m_keeper && m_keeper->journal().isOpenElsewhere(path))
        m_bars.file->say(tr("%1 is open in another window too. Of two that save, the second is asked before "
                            "anything is overwritten.")
                             .arg(fileName()));
    // A job that was left behind and belongs to this file is the one to offer now.
    const auto own =
        std::find_if(m_left.begin(), m_left.end(), [&](const KeptJob& kept) { return kept.jobFile == path; });
    if (own != m_left.end()) {
        std::rotate(m_left.begin(), own, own + 1);
        offerLeftBehind();
    }
    Q_EMIT this->opened();
    return true;
}

bool JobFiles::writeTo(const std::filesystem::path& file) {
    const auto saved = m_document.saveAs(file);
    if (!saved) {
        const bool kept = m_keeper && m_keeper->flush();
        m_bars.file->ask(tr("%1 could not be saved: %2. %3")
                             .arg(nameOf(file), QString::fromStdString(saved.problem().message),
                                  kept ? tr("The job is still here, and kept safe until it is saved.")
                                       : tr("The job is still here.")),
                         {{tr("Save as…"), [this] { saveAs(); }}});
        return false;
    }
    m_bars.file->say({});
    if (!m_document.saveRemark().isEmpty())
        m_bars.file->say(tr("%1 is saved. %2").arg(nameOf(file), m_document.saveRemark()));
    remember(file);
    return true;
}

void JobFiles::finishTyping() {
    // What stands half typed in a field counts before the job is saved or asked for.
    if (auto* focus = QApplication::focusWidget(); focus && m_window->isAncestorOf(focus)) {
        focus->clearFocus();
        focus->setFocus();
    }
}

bool JobFiles::save() {
    finishTyping();
    if (m_document.path().empty())
        return saveAs();
    if (m_document.onDisk() == Document::OnDisk::Changed) {
        refuseToOverwrite();
        return false;
    }
    return writeTo(m_document.path());
}

bool JobFiles::saveAs() {
    finishTyping();
    const QString proposal =
        settings::lastFolder() + QLatin1Char('/') +
        (m_document.path().empty() ? m_document.name() + QStringLiteral(".plate.json") : fileName());
    std::filesystem::path file =
        m_questions.savePath(m_window, tr("Save the job"), proposal, tr("Jobs (*.plate.json)"));
    if (file.empty())
        return false;
    if (!file.string().ends_with(".json"))
        file += ".plate.json";
    return writeTo(whole(file));
}

void JobFiles::revert() {
    if (m_document.path().empty())
        return;
    const auto taken = m_document.revert();
    if (!taken)
        m_bars.file->say(tr("%1 could not be read: %2. The job is as it was.")
                             .arg(fileName(), QString::fromStdString(taken.problem().message)));
    else
        m_bars.file->say(tr("Back to what %1 holds. Undo brings back what stood here.").arg(fileName()));
}

bool JobFiles::maybeSave() {
    finishTyping();
    if (!m_document.isChanged())
        return true;
    switch (m_questions.unsaved(m_window, m_document.name())) {
    case Questions::Unsaved::Save:
        return save();
    case Questions::Unsaved::Discard:
        return true;
    case Questions::Unsaved::Cancel:
        break;
    }
    return false;
}

void JobFiles::close() {
    if (m_keeper)
        m_keeper->forget();
}

// --- What others do to the file

void JobFiles::fileChanged() {
    const QString path = QString::fromStdString(m_document.path().string());
    const QStringList watched = m_watcher.files();
    if (!watched.contains(path) && !watched.isEmpty()) {
        m_watcher.removePaths(watched);
        m_bars.file->say({}); // it was about another file
    }
    if (!path.isEmpty() && !watched.contains(path) && QFileInfo::exists(path))
        m_watcher.addPath(path);
    if (m_document.onDisk() == Document::OnDisk::Same)
        m_told = Document::OnDisk::Same;
}

void JobFiles::look() {
    const auto now = m_document.onDisk();
    const QString path = QString::fromStdString(m_document.path().string());
    if (now != Document::OnDisk::Gone && !path.isEmpty() && !m_watcher.files().contains(path))
        m_watcher.addPath(path); // another file of the same name now
    if (now == m_told)
        return;
    m_told = now;
    tellOnDisk(now);
}

void JobFiles::tellOnDisk(Document::OnDisk now) {
    switch (now) {
    case Document::OnDisk::Same:
        m_bars.file->say({});
        return;
    case Document::OnDisk::Gone:
        m_document.fileLost();
        m_bars.file->ask(tr("%1 is no longer where it was. The job is still here.").arg(fileName()),
                         {{tr("Save it again"), [this] { save(); }}, {tr("Save as…"), [this] { saveAs(); }}});
        return;
    case Document::OnDisk::Changed:
        m_bars.file->ask(
            tr("Someone else has changed %1 on the disk. Here it stands as it was.").arg(fileName()),
            {{tr("Take theirs"), [this] { revert(); }}});
        return;
    }
}

void JobFiles::refuseToOverwrite() {
    m_told = Document::OnDisk::Changed;
    m_bars.file->ask(tr("Not saved: someone else has changed %1 since it was read here. Saved over, theirs "
                        "stays as %1~.")
                         .arg(fileName()),
                     {{tr("Save mine over it"), [this] { writeTo(m_document.path()); }},
                      {tr("Take theirs"), [this] { revert(); }},
                      {tr("Save as…"), [this] { saveAs(); }}});
}

// --- Recent jobs

void JobFiles::fillRecent(QMenu* menu) {
    constexpr int kShown = 10;
    menu->clear();
    for (const QString& file : settings::recentJobs()) {
        if (menu->actions().size() >= kShown)
            break;
        if (!QFileInfo::exists(file))
            continue;
        const QFileInfo info(file);
        QString name = info.fileName();
        if (name.endsWith(QLatin1String(".plate.json")))
            name.chop(11);
        // An ampersand in a name is no shortcut; the folder tells two of one name apart.
        auto* action = menu->addAction(
            tr("%1 in %2").arg(name, info.dir().dirName()).replace(QLatin1Char('&'), QStringLiteral("&&")));
        action->setToolTip(plainTip(QDir::toNativeSeparators(file)));
        connect(action, &QAction::triggered, this, [this, file] {
            if (maybeSave())
                open(file.toStdString());
        });
    }
    if (menu->isEmpty())
        menu->addAction(tr("None yet"))->setEnabled(false);
}

} // namespace pw::gui
