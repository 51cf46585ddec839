#include "app/gui/rack/rack_desk.h"

#include "app/gui/models/field_text.h"
#include "app/gui/models/piece_cut.h"
#include "app/gui/models/piece_tree.h"
#include "app/gui/panels/notice_bar.h"
#include "app/gui/rack/piece_editor.h"
#include "app/gui/rack/piece_figures.h"
#include "app/gui/rack/rack_list.h"
#include "app/gui/rack/rack_page.h"
#include "app/gui/settings/settings.h"
#include "app/gui/widgets/segments.h"
#include "app/gui/widgets/word_button.h"
#include "app/gui/widgets/work_bar.h"

#include <algorithm>
#include <QApplication>
#include <QLineEdit>
#include <QListView>

// What is done with the rack; where its file comes from and goes to is in rack_desk_files.cpp.
namespace pw::gui {

using jobfile::Tree;

namespace {

/// The job without what its ranking does not hang on: thickness, steel and tests are each piece's own.
job::Job essence(job::Job job) {
    job.plate.thickness.reset();
    job.plate.steel.reset();
    job.plate.tests = {};
    job.piece.reset();
    job.rack.clear();
    job.title.clear();
    job.notes.clear();
    return job;
}

} // namespace

RackDesk::RackDesk(Document& document, RackShelf& shelf, RankFunction rank, Questions& questions,
                   QWidget* window)
    : QObject(window), m_document(document), m_shelf(shelf), m_questions(questions), m_window(window),
      m_page(new RackPage(window)), m_ranker(new RackRanker(std::move(rank), this)) {
    m_prefer = engine::preferFrom(settings::rackPreference().toStdString()).value_or(m_prefer);
    m_page->setPrefer(m_prefer);
    connect(&m_shelf, &RackShelf::changed, this, &RackDesk::shelfChanged);
    connect(&m_shelf, &RackShelf::fileChanged, this, &RackDesk::fileChanged);
    connect(&m_shelf, &RackShelf::taken, this, [this](RackDocument* rack) {
        m_page->notice().say(
            tr("%1 was changed by another program; what it holds now stands here. Undo goes back.")
                .arg(rack->fileName()));
    });
    connect(&m_document, &Document::changed, this, [this] {
        if (m_open) {
            refresh();
            this->rank();
        }
    });
    connect(&m_document.undoStack(), &QUndoStack::indexChanged, this, [this] {
        m_rackLast = false;
        Q_EMIT historyChanged();
    });
    connect(m_ranker, &RackRanker::found, this,
            [this](std::shared_ptr<const engine::RackAnswer> answer,
                   std::shared_ptr<const rack::RackReading> reading) {
                m_ranked = {std::move(answer), std::move(reading)};
                m_page->list().setStale(false);
                QString words;
                if (!m_ranked.answer->problems.empty())
                    words = local(m_ranked.answer->problems.front().message);
                else if (!m_ranked.answer->missing.empty())
                    words = local(m_ranked.answer->missing.front().how);
                m_page->progress().setIdle(words.isEmpty() ? words : tr("Not ranked. %1").arg(words));
                refresh();
            });
    connect(m_ranker, &RackRanker::slow, this, [this](double done, const QString& what) {
        m_page->progress().setBusy(done, what.isEmpty() ? tr("Ranking the pieces") : what);
    });
    connect(m_ranker, &RackRanker::foretold, this,
            [this](const QString& words) { m_page->progress().setAhead(words, tr("Ranking the pieces")); });
    connect(m_ranker, &RackRanker::failed, this, [this](const QString& what) {
        m_asked.reset();
        m_page->progress().setIdle(tr("Not ranked: %1").arg(what), tr("Rank them"));
    });
    connect(&m_page->progress(), &WorkBar::stopAsked, this, [this] {
        m_ranker->stop();
        m_page->progress().setIdle(tr("Stopped. The pieces stand as far as they are ranked."),
                                   tr("Rank them"));
    });
    connect(&m_page->progress(), &WorkBar::againAsked, this, [this] {
        m_asked.reset();
        this->rank();
    });
    connect(m_page, &RackPage::preferChosen, this, [this](engine::Prefer prefer) {
        m_prefer = prefer;
        const auto word = engine::wordOf(prefer);
        settings::setRackPreference(QString::fromUtf8(word.data(), static_cast<qsizetype>(word.size())));
        this->rank();
    });
    connect(m_page, &RackPage::closeAsked, this, &RackDesk::close);
    connect(m_page, &RackPage::addAsked, this, &RackDesk::add);
    RackList& list = m_page->list();
    connect(&list, &RackList::layAsked, this, &RackDesk::lay);
    connect(&list, &RackList::cutAsked, this, &RackDesk::cut);
    connect(&list, &RackList::changeAsked, this, &RackDesk::change);
    connect(&list, &RackList::copyAsked, this, [this](std::size_t row) {
        if (RackDocument* rack = m_shelf.rack()) {
            rack->copy(row);
            m_page->list().pick(row + 1);
        }
    });
    connect(&list, &RackList::takeOffAsked, this, [this](std::size_t row) {
        if (RackDocument* rack = m_shelf.rack())
            rack->takeOff(row);
    });
    PieceEditor& editor = m_page->editor();
    connect(&editor, &PieceEditor::done, this, &RackDesk::leaveEditor);
    connect(&editor, &PieceEditor::pointsAsked, this, &RackDesk::askPoints);
    connect(&editor, &PieceEditor::sidesAsked, this, &RackDesk::askSides);
    watchHistory();
    shelfChanged();
}

void RackDesk::open() {
    if (m_open)
        return;
    m_open = true;
    m_rackLast = true;
    m_page->notice().say({});
    m_page->list().forgetPick();
    refresh();
    rank();
    Q_EMIT openChanged(true);
    Q_EMIT historyChanged();
    if (m_page->emptyWords().isEmpty())
        m_page->list().view()->setFocus(Qt::OtherFocusReason);
    else if (!m_page->ways().empty())
        m_page->ways().front()->setFocus(Qt::OtherFocusReason);
}

void RackDesk::close() {
    if (!m_open)
        return;
    m_page->editor().figures().finishTyping();
    leaveEditor();
    m_open = false;
    if (m_ranker->isBusy()) {
        m_ranker->stop();
        m_asked.reset();
    }
    m_page->progress().setIdle();
    for (const RackDocument* rack : m_shelf.flush())
        Q_EMIT said(rack->trouble());
    Q_EMIT openChanged(false);
    Q_EMIT historyChanged();
}

void RackDesk::setUnits(units::System system) {
    m_units = system;
    m_page->editor().setUnits(system);
    if (m_open) {
        refresh();
        rank();
    }
}

void RackDesk::setSnap(double mm) {
    m_page->editor().setSnap(mm);
}

QUndoStack& RackDesk::history() {
    return m_open && m_rackLast && m_shelf.rack() ? m_shelf.rack()->undoStack() : m_document.undoStack();
}

void RackDesk::watchHistory() {
    if (m_watched == m_shelf.rack())
        return;
    if (m_watched)
        disconnect(&m_watched->undoStack(), nullptr, this, nullptr);
    m_watched = m_shelf.rack();
    if (m_watched)
        connect(&m_watched->undoStack(), &QUndoStack::indexChanged, this, [this] {
            m_rackLast = true;
            Q_EMIT historyChanged();
        });
    Q_EMIT historyChanged();
}

// --- The list

void RackDesk::shelfChanged() {
    const bool another = m_watched != m_shelf.rack();
    watchHistory();
    followName();
    if (another) {
        m_ranked = {};
        m_page->notice().say({});
        leaveEditor();
        if (const RackDocument* rack = m_shelf.rack())
            settings::setLastRack(QString::fromStdString(rack->path().string()));
    }
    if (!m_open)
        return;
    refresh();
    rank();
}

/// A piece that gets another name is the same piece: the job goes on naming it.
void RackDesk::followName() {
    const auto reading = m_shelf.reading();
    const std::string named = m_document.job().piece ? m_document.job().piece->name : std::string();
    const auto rowNamed = [&](const std::string& name) -> const rack::Offcut* {
        const auto found = std::ranges::find(reading->rack.offcuts, name, &rack::Offcut::name);
        return found == reading->rack.offcuts.end() ? nullptr : &*found;
    };
    if (!reading || named.empty()) {
        m_underName.clear();
        return;
    }
    if (const rack::Offcut* offcut = rowNamed(named)) {
        m_underName = named;
        m_underRow = offcut->row;
    } else if (named == m_underName && m_watched && m_watched->rowCount() == m_editedRows &&
               m_page->isEditing()) {
        const auto same = std::ranges::find(reading->rack.offcuts, m_underRow, &rack::Offcut::row);
        if (same == reading->rack.offcuts.end() || m_page->editor().row() != m_underRow)
            return;
        m_underName = same->name;
        m_document.edit("piece.name", same->name, tr("Name of the piece"));
        m_rackLast = true; // it is the rack that was changed
        Q_EMIT historyChanged();
    }
}

void RackDesk::refresh() {
    const auto reading = m_shelf.reading();
    RackDocument* rack = m_shelf.rack();
    if (m_page->isEditing() && (!rack || rack->rowCount() != m_editedRows))
        leaveEditor();
    showFileWords();
    if (m_page->isEditing())
        return;
    if (!rack || !reading || rack->rowCount() == 0)
        return showWays();
    m_page->showList();
    m_page->list().setRows(rackRows(*reading, m_ranked, m_units));
    std::size_t under = RackList::kNone;
    if (const auto& piece = m_document.job().piece)
        for (const rack::Offcut& offcut : reading->rack.offcuts)
            if (offcut.name == piece->name)
                under = offcut.row;
    m_page->list().setUnder(under);
}

const RackRow* RackDesk::rowOf(std::size_t row) const {
    const RackModel& model = m_page->list().model();
    return model.rowAt(model.indexOf(row));
}

void RackDesk::rank() {
    const auto reading = m_shelf.reading();
    if (!m_open || !reading || reading->rack.offcuts.empty()) {
        m_ranker->stop();
        m_page->progress().setIdle();
        return;
    }
    job::Job job = m_document.job();
    job.preferred = m_units;
    job::Job question = essence(job);
    const bool same = m_asked && *m_asked == question && m_askedRack == reading && m_askedPrefer == m_prefer;
    if (same)
        return;
    m_asked = std::move(question);
    m_askedRack = reading;
    m_askedPrefer = m_prefer;
    m_page->list().setStale(true);
    m_ranker->ask(job, reading, m_prefer);
}

void RackDesk::lay(std::size_t row) {
    const auto reading = m_shelf.reading();
    const RackRow* shown = rowOf(row);
    if (!reading || !shown || shown->kind != RackRow::Kind::Piece)
        return;
    const QString name = shown->title;
    m_document.replace(laidOn(m_document.tree(), *reading, *shown), tr("Lay it on %1").arg(name));
    close();
}

void RackDesk::cut(std::size_t row) {
    const auto reading = m_shelf.reading();
    RackDocument* rack = m_shelf.rack();
    if (!reading || !rack || !rack->write())
        return;
    const RackRow* shown = rowOf(row);
    const auto done =
        cutPiece(m_document.job(), rack->tree(), *reading, shown ? shown->answer.get() : nullptr);
    if (!done)
        return m_page->notice().say(local(done.problem().message));
    const QString name = QString::fromStdString(m_document.job().piece->name);
    if (done->isLast) // it is no piece of the rack any more that the job could lie on
        m_document.edit("piece", Tree(), tr("Cut from %1").arg(name));
    rack->replace(done->rack, tr("Cut from %1").arg(name));
    m_page->notice().say(done->words);
}

// --- One piece

void RackDesk::add() {
    if (!m_shelf.rack() && !begin())
        return;
    RackDocument* rack = m_shelf.rack();
    rack->add(newPiece(rack->freeName(tr("Offcut")), m_units), tr("Add an offcut"));
    change(rack->rowCount() - 1);
    if (auto* name = qobject_cast<QLineEdit*>(QApplication::focusWidget()))
        name->selectAll(); // ours is there to be typed over
}

void RackDesk::change(std::size_t row) {
    RackDocument* rack = m_shelf.rack();
    if (!rack || !rack->piece(row))
        return;
    m_editedRows = rack->rowCount();
    m_page->notice().say({});
    m_page->editor().setUnits(m_units);
    m_page->editor().setPiece(rack, row);
    m_page->showEditor();
    m_page->editor().figures().openField("name");
}

void RackDesk::leaveEditor() {
    if (!m_page->isEditing())
        return;
    const std::size_t row = m_page->editor().row();
    m_page->showList();
    m_page->editor().setPiece(nullptr, 0);
    if (!m_open)
        return;
    refresh();
    m_page->list().pick(row);
    m_page->list().view()->setFocus(Qt::OtherFocusReason);
}

void RackDesk::takeOutline(const util::Result<Tree>& points, const QString& label) {
    RackDocument* rack = m_shelf.rack();
    if (!rack || !m_page->isEditing())
        return;
    if (!points)
        return m_page->notice().say(local(points.problem().message));
    const std::string at = RackDocument::pathOf(m_page->editor().row()) + ".outline";
    Tree after = rack->tree();
    after.set(at + ".shape", "polygon");
    after.set(at + ".points", *points);
    if (const auto objection = rack->objectionTo(after, at))
        return m_page->notice().say(*objection);
    m_page->notice().say({});
    rack->replace(std::move(after), label);
}

void RackDesk::askPoints() {
    QString text = m_questions.text(
        m_window, tr("Points of the outline"),
        tr("Type or paste the points in order round the edge, x and y, with a semicolon after each."),
        m_units == units::System::Inch ? QStringLiteral("0 0; 13 0; 13 3; 0 11 1/2")
                                       : QStringLiteral("0 0; 330 0; 330 70; 0 290"));
    text.replace(QChar(0x2028), QLatin1Char(';')).replace(QChar(0x2029), QLatin1Char(';'));
    if (!text.isEmpty())
        takeOutline(pointsFrom(text.toStdString(), m_units), tr("Points of the outline"));
}

void RackDesk::askSides() {
    const QString text = m_questions.text(
        m_window, tr("Four sides and a diagonal"),
        tr("Type the four sides in order round the piece, then the diagonal from the first corner to the "
           "third."),
        m_units == units::System::Inch ? QStringLiteral("12, 8 1/4, 11 1/2, 8; 14 1/4")
                                       : QStringLiteral("300, 210, 290, 205; 360"));
    if (!text.isEmpty())
        takeOutline(fourSides(text.toStdString(), m_units), tr("Four sides and a diagonal"));
}

} // namespace pw::gui
