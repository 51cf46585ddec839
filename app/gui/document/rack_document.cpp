#include "app/gui/document/rack_document.h"

#include "core/jobfile/json.h"
#include "core/rack/rack_file.h"
#include "core/util/write_file.h"
#include "geometry/placement/stock.h"

#include <algorithm>
#include <utility>

namespace pw::gui {

using jobfile::Tree;

namespace {

/// In a rack of more pieces than this only the figures are looked at while typing, not each one's shape.
constexpr std::size_t kMostShapes = 2000;

/// All that is wrong in a rack: with the file, with figures, with shapes.
util::Problems problemsOf(const rack::RackReading& reading) {
    util::Problems problems = reading.problems;
    for (const rack::Remark& remark : reading.refused)
        problems.push_back({remark.field, remark.message});
    if (reading.rack.offcuts.size() > kMostShapes)
        return problems;
    for (const rack::Offcut& offcut : reading.rack.offcuts)
        for (const util::Problem& problem : placement::buildStock(offcut).problems)
            problems.push_back({RackDocument::pathOf(offcut.row) + "." + problem.field, problem.message});
    return problems;
}

} // namespace

RackDocument::RackDocument(std::filesystem::path file, QObject* parent)
    : TreeDocument(parent), m_path(std::move(file)), m_reading(std::make_shared<const rack::RackReading>()) {
    m_rest.setSingleShot(true);
    m_rest.setInterval(kRestMs);
    connect(&m_rest, &QTimer::timeout, this, [this] { write(); });
}

RackDocument::~RackDocument() {
    undoStack().blockSignals(true);
    blockSignals(true);
    if (m_rest.isActive())
        write();
}

QString RackDocument::fileName() const {
    return QString::fromStdString(m_path.filename().string());
}

util::Status RackDocument::open() {
    // Read first: a change between the two is then noticed, not taken for what was opened.
    const auto text = util::readFile(m_path);
    auto loaded = rack::loadRackTree(m_path);
    if (!loaded)
        return loaded.problem();
    const rack::RackReading reading = rack::readRack(*loaded);
    if (!reading.problems.empty())
        return reading.problems.front();
    m_openedText = m_onDisk = text ? *text : std::string();
    m_opened = *loaded;
    m_taking = true;
    Q_EMIT replaced();
    setTree(*loaded);
    m_taking = false;
    return util::Done{};
}

util::Status RackDocument::begin() {
    std::error_code error;
    if (std::filesystem::exists(m_path, error))
        return util::Problem{m_path.string(), tr("There is such a file already.").toStdString()};
    const Tree tree = rack::newRackTree();
    if (auto saved = rack::saveRackTree(tree, m_path); !saved)
        return saved;
    m_kept = true; // there was nothing before
    return open();
}

void RackDocument::read() {
    m_reading = std::make_shared<const rack::RackReading>(rack::readRack(tree()));
    m_problems = problemsOf(*m_reading);
    if (m_taking)
        return;
    m_written = false;
    if (isInGesture())
        m_rest.start();
    else
        QMetaObject::invokeMethod( // when everybody knows of it
            this,
            [this] {
                if (!m_written && !m_rest.isActive())
                    write();
            },
            Qt::QueuedConnection);
}

util::Problems RackDocument::problemsIn(const Tree& tree) const {
    return problemsOf(rack::readRack(tree));
}

// --- Edits

std::size_t RackDocument::rowCount() const {
    const Tree* rows = tree().find("offcuts");
    return rows && rows->items() ? rows->items()->size() : 0;
}

const Tree* RackDocument::piece(std::size_t row) const {
    return row < rowCount() ? &(*tree().find("offcuts")->items())[row] : nullptr;
}

std::string RackDocument::freeName(const QString& wanted) const {
    const auto isTaken = [this](const std::string& name) {
        for (std::size_t row = 0; row < rowCount(); ++row)
            if (const Tree* other = piece(row)->find("name");
                other && other->text() && *other->text() == name)
                return true;
        return false;
    };
    std::string name = wanted.toStdString();
    for (int i = 2; isTaken(name); ++i)
        name = tr("%1 %2", "a second piece of a name").arg(wanted).arg(i).toStdString();
    return name;
}

void RackDocument::add(Tree piece, const QString& label) {
    edit(pathOf(rowCount()), std::move(piece), label);
}

void RackDocument::copy(std::size_t row) {
    const Tree* original = piece(row);
    if (!original)
        return;
    Tree twin = *original;
    const Tree* name = twin.find("name");
    const QString called = name && name->text() ? QString::fromStdString(*name->text()) : tr("Piece");
    if (twin.members())
        twin["name"] = freeName(called);
    Tree after = tree();
    Tree::List& rows = *after["offcuts"].items();
    rows.insert(rows.begin() + static_cast<std::ptrdiff_t>(row) + 1, std::move(twin));
    replace(std::move(after), tr("Copy %1").arg(called));
}

void RackDocument::takeOff(std::size_t row) {
    const Tree* original = piece(row);
    if (!original)
        return;
    const Tree* name = original->find("name");
    edit(pathOf(row), Tree(),
         tr("Take %1 off the rack")
             .arg(name && name->text() ? QString::fromStdString(*name->text()) : tr("a piece")));
}

// --- The file

bool RackDocument::fail(Trouble kind, const QString& words) {
    m_trouble = words;
    m_kind = kind;
    Q_EMIT fileChanged();
    return false;
}

void RackDocument::written(const std::string& text) {
    m_onDisk = text;
    m_written = true;
    m_trouble.clear();
    m_kind = Trouble::None;
    Q_EMIT fileChanged();
}

bool RackDocument::write(bool over) {
    m_rest.stop();
    if (m_written && !over)
        return true;
    std::error_code error;
    const bool there = std::filesystem::exists(m_path, error);
    if (!over && !there && !error)
        return fail(Trouble::Gone, tr("%1 is gone. What stands here is not in any file.").arg(fileName()));
    const auto disk = util::readFile(m_path);
    const bool foreign = there && (!disk || *disk != m_onDisk);
    if (foreign && !over)
        return fail(Trouble::Foreign,
                    tr("%1 was written by another program meanwhile. Your changes stand here and are not in "
                       "the file.")
                        .arg(fileName()));
    const std::string text = tree() == m_opened ? m_openedText : jobfile::toJson(tree());
    const bool keep = !m_kept || foreign;
    const auto saved = keep && text != m_openedText ? rack::saveRackTree(tree(), m_path)
                                                    : util::writeFileWhole(m_path, text);
    if (!saved)
        return fail(Trouble::CannotWrite,
                    tr("%1 could not be written: %2. Your changes stand here.")
                        .arg(fileName(), QString::fromStdString(saved.problem().message)));
    m_kept = m_kept || keep;
    written(text);
    return true;
}

bool RackDocument::look() {
    std::error_code error;
    if (!std::filesystem::exists(m_path, error)) {
        if (!error && m_trouble.isEmpty()) {
            m_written = false;
            fail(Trouble::Gone, tr("%1 is gone. What stands here is not in any file.").arg(fileName()));
        }
        return false;
    }
    const auto text = util::readFile(m_path);
    if (!text || *text == m_onDisk) // what cannot be read now cannot be compared
        return false;
    if (!m_written) {
        fail(Trouble::Foreign,
             tr("%1 was written by another program meanwhile. Your changes stand here and are not in the "
                "file.")
                 .arg(fileName()));
        return false;
    }
    return takeTheirs();
}

bool RackDocument::takeTheirs() {
    const auto text = util::readFile(m_path);
    auto loaded = rack::loadRackTree(m_path);
    if (!text || !loaded) {
        m_written = false;
        return fail(Trouble::Foreign,
                    tr("%1 holds no rack any more: %2. What was read before stands here.")
                        .arg(fileName(), QString::fromStdString(loaded ? text.problem().message
                                                                       : loaded.problem().message)));
    }
    m_rest.stop();
    m_kept = false; // another one than was there before: worth keeping
    m_taking = true;
    replace(std::move(*loaded), tr("What another program wrote"));
    m_taking = false;
    written(*text);
    return true;
}

} // namespace pw::gui
