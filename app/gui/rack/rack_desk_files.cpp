#include "app/gui/panels/notice_bar.h"
#include "app/gui/rack/piece_editor.h"
#include "app/gui/rack/piece_figures.h"
#include "app/gui/rack/rack_desk.h"
#include "app/gui/rack/rack_page.h"
#include "app/gui/settings/settings.h"
#include "core/rack/rack_file.h"
#include "core/util/write_file.h"

// Where the rack comes from and how it is kept.
namespace pw::gui {

void RackDesk::showFileWords() {
    const RackDocument* rack = m_shelf.rack();
    if (!rack)
        return m_page->setFileWords({});
    const QString pieces = tr("%n pieces", "", static_cast<int>(rack->rowCount()));
    const QString words = tr("%1, %2", "the rack's file, how many pieces").arg(rack->fileName(), pieces);
    m_page->setFileWords(rack->trouble().isEmpty() ? words : tr("%1, not in the file").arg(words));
}

/// There is no list: why, and what may be done.
void RackDesk::showWays() {
    std::vector<RackPage::Way> ways;
    const auto open = RackPage::Way{tr("Open another rack file…"), [this] {
                                        const auto file = m_questions.openRackPath(m_window);
                                        if (!file.empty())
                                            useRack(file);
                                    }};
    if (m_shelf.rack())
        return m_page->showEmpty(tr("No pieces yet. Add the first offcut."),
                                 {{tr("Add the first offcut"), [this] { add(); }}});
    std::error_code error;
    if (m_shelf.file().empty()) {
        ways.push_back({tr("Add the first offcut"), [this] { add(); }});
        const std::filesystem::path last = settings::lastRack().toStdString();
        if (!last.empty() && std::filesystem::exists(last, error))
            ways.push_back(
                {tr("Take the rack used last, %1")
                     .arg(QString::fromStdString((last.parent_path().filename() / last.filename()).string())),
                 [this, last] { useRack(last); }});
        ways.push_back(open);
        return m_page->showEmpty(
            m_shelf.besideJob().empty()
                ? tr("No pieces yet. Add the first offcut.")
                : tr("No pieces yet. Add the first offcut, and a rack begins beside the job."),
            std::move(ways));
    }
    const bool hasPlace = !m_document.path().empty() || m_shelf.file().is_absolute();
    if (hasPlace && !std::filesystem::exists(m_shelf.file(), error))
        ways.push_back({tr("Begin it with the first offcut"), [this] { add(); }});
    std::filesystem::path copy = m_shelf.file();
    copy += "~";
    if (std::filesystem::exists(m_shelf.file(), error) && rack::loadRackTree(copy))
        ways.push_back(
            {tr("Take the copy %1").arg(QString::fromStdString(copy.filename().string())), [this, copy] {
                 // What cannot be read is kept as well: somebody may mend it by hand.
                 std::filesystem::path broken = m_shelf.file();
                 broken += ".broken";
                 const auto text = util::readFile(m_shelf.file()), good = util::readFile(copy);
                 if (text && good && util::writeFileWhole(broken, *text) &&
                     util::writeFileWhole(m_shelf.file(), *good))
                     m_shelf.look();
             }});
    ways.push_back(open);
    m_page->showEmpty(m_shelf.rackTrouble(), std::move(ways));
}

/// A rack where there is none: beside the job, or where the person says.
bool RackDesk::begin() {
    std::filesystem::path file = m_shelf.file();
    if (file.empty() || (m_document.path().empty() && file.is_relative()))
        file = m_shelf.besideJob();
    if (file.empty())
        file =
            m_questions.savePath(m_window, tr("Where the rack is kept"),
                                 settings::lastFolder() + QStringLiteral("/rack.json"), tr("Racks (*.json)"));
    if (file.empty())
        return false;
    useRack(file);
    return m_shelf.rack() != nullptr;
}

void RackDesk::useRack(const std::filesystem::path& file) {
    if (const auto used = m_shelf.use(file); !used)
        m_page->notice().say(QString::fromStdString(used.problem().message));
    else
        refresh();
}

void RackDesk::fileChanged(RackDocument* rack) {
    showFileWords();
    if (rack != m_shelf.rack())
        return;
    if (rack->trouble().isEmpty()) {
        if (m_page->notice().words() == m_told)
            m_page->notice().say({});
        m_told.clear();
        return;
    }
    m_told = rack->trouble();
    std::vector<NoticeBar::Choice> choices;
    const QPointer<RackDocument> open(rack);
    const auto add = [&](const QString& words, auto act) {
        choices.push_back({words, [open, act] {
                               if (open)
                                   act(*open);
                           }});
    };
    switch (rack->troubleKind()) {
    case RackDocument::Trouble::Foreign:
        add(tr("Keep mine"), [](RackDocument& r) { r.write(true); });
        add(tr("Take theirs"), [](RackDocument& r) { r.takeTheirs(); });
        break;
    case RackDocument::Trouble::Gone:
        add(tr("Write it again"), [](RackDocument& r) { r.write(true); });
        break;
    default:
        add(tr("Try again"), [](RackDocument& r) { r.write(); });
    }
    m_page->notice().ask(m_told, std::move(choices));
    if (!m_open)
        Q_EMIT said(m_told);
}

bool RackDesk::maybeLeave() {
    m_page->editor().figures().finishTyping();
    QString words;
    for (const RackDocument* rack : m_shelf.flush())
        words += rack->trouble() + QLatin1Char('\n');
    return words.isEmpty() ||
           m_questions.really(m_window, tr("Rack"), words + tr("Close, and lose these changes?"),
                              tr("Close all the same"));
}

} // namespace pw::gui
