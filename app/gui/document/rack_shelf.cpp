#include "app/gui/document/rack_shelf.h"

#include "app/engine/rack.h"
#include "app/engine/rack_place.h"
#include "app/gui/settings/settings.h"
#include "core/rack/rack_file.h"

#include <algorithm>

namespace pw::gui {

namespace {

QString fullPath(const std::filesystem::path& file) {
    std::error_code error;
    return QString::fromStdString(std::filesystem::weakly_canonical(file, error).string());
}

} // namespace

RackShelf::RackShelf(Document& document, QObject* parent) : QObject(parent), m_document(document) {
    connect(&m_document, &Document::changed, this, &RackShelf::jobChanged);
    connect(&m_document, &Document::fileChanged, this, &RackShelf::jobChanged); // it may lie elsewhere now
    jobChanged();
}

std::shared_ptr<const rack::RackReading> RackShelf::reading() const {
    const std::lock_guard lock(m_mutex);
    return m_reading;
}

void RackShelf::look() {
    if (m_rack) {
        if (m_rack->look())
            Q_EMIT taken(m_rack);
    } else if (!m_file.empty()) {
        // Not there before, or not to be read: it may be now.
        const QString trouble = m_rackTrouble;
        const bool news = readFile();
        if (findPiece() || (news && (m_rack || trouble != m_rackTrouble)))
            Q_EMIT changed();
    }
}

std::filesystem::path RackShelf::besideJob() const {
    const auto& job = m_document.path();
    return job.empty() ? std::filesystem::path() : job.parent_path() / "rack.json";
}

util::Status RackShelf::use(const std::filesystem::path& file) {
    std::error_code error;
    if (!std::filesystem::exists(file, error)) {
        RackDocument begun(file);
        if (auto done = begun.begin(); !done)
            return done;
    } else if (const auto tree = rack::loadRackTree(file); !tree) {
        return tree.problem();
    }
    const bool beside = !m_document.path().empty() && file.parent_path() == m_document.path().parent_path();
    if (!beside)
        settings::allowRack(fullPath(file)); // picked by hand: that is having asked
    const std::string name = beside ? file.filename().string() : file.string();
    if (m_document.job().rack == name)
        look();
    else
        m_document.edit("rack", name, tr("Rack file"));
    return util::Done{};
}

std::vector<RackDocument*> RackShelf::flush() {
    std::vector<RackDocument*> left;
    for (const auto& [file, rack] : m_racks)
        if (!rack->write())
            left.push_back(rack);
    return left;
}

void RackShelf::rackChanged() {
    {
        const std::lock_guard lock(m_mutex);
        m_reading = m_rack->reading();
    }
    findPiece();
    Q_EMIT changed();
}

void RackShelf::allow() {
    settings::allowRack(fullPath(m_file));
    readFile();
    findPiece();
    Q_EMIT changed();
}

void RackShelf::jobChanged() {
    const job::Job& job = m_document.job();
    const auto file = engine::rackFileOf(job, m_document.path());
    const std::string piece = job.piece ? job.piece->name : std::string();
    const bool sameRack = file == m_file && job.rack == m_named;
    if (sameRack && piece == m_piece)
        return;
    bool news = false;
    if (!sameRack) {
        m_file = file;
        m_named = job.rack;
        news = readFile();
    }
    m_piece = piece;
    if (findPiece() || news)
        Q_EMIT changed();
}

/// Did anything come of it that was not so before?
bool RackShelf::readFile() {
    std::shared_ptr<const rack::RackReading> reading;
    QString trouble;
    m_rack = nullptr;
    const QString name = QString::fromStdString(m_named);
    m_isOutside = false;
    if (!m_named.empty() && m_document.path().empty() && m_file.is_relative()) {
        trouble = tr("The rack %1 lies beside the job. Save the job first.").arg(name);
    } else if (const auto place = engine::rackToRead(m_document.job(), m_document.path());
               !place && !settings::mayReadRack(fullPath(m_file))) {
        m_isOutside = true;
        trouble = QString::fromStdString(place.problem().message);
    } else if (std::error_code error; !m_named.empty() && !std::filesystem::exists(m_file, error)) {
        trouble = tr("The rack %1 is not there. The job goes on without it.").arg(name);
    } else if (!m_named.empty()) {
        auto& rack = m_racks[m_file];
        if (!rack) {
            auto fresh = std::make_unique<RackDocument>(m_file);
            if (const auto opened = fresh->open(); !opened) {
                trouble = tr("The rack %1 cannot be read: %2")
                              .arg(name, QString::fromStdString(opened.problem().message));
                m_racks.erase(m_file);
            } else {
                rack = fresh.release();
                rack->setParent(this);
                connect(rack, &RackDocument::changed, this, [this, rack] {
                    if (rack == m_rack)
                        rackChanged();
                });
                connect(rack, &RackDocument::fileChanged, this, [this, rack] { Q_EMIT fileChanged(rack); });
                m_rack = rack;
            }
        } else {
            m_rack = rack;
            rack->look();
        }
        if (m_rack)
            reading = m_rack->reading();
    }
    const bool news = reading || m_reading || trouble != m_rackTrouble;
    m_rackTrouble = trouble;
    const std::lock_guard lock(m_mutex);
    m_reading = std::move(reading);
    return news;
}

bool RackShelf::findPiece() {
    const auto before = std::exchange(m_stock, nullptr);
    const QString troubleBefore = std::exchange(m_pieceTrouble, QString());
    const auto rack = reading();
    if (!m_piece.empty() && rack) {
        const auto refused = std::ranges::find(rack->refused, m_piece, &rack::Remark::name);
        const auto offcut = std::ranges::find(rack->rack.offcuts, m_piece, &rack::Offcut::name);
        if (offcut != rack->rack.offcuts.end()) {
            placement::BuiltStock built = placement::buildStock(*offcut);
            if (built.problems.empty())
                m_stock = std::make_shared<const placement::Stock>(std::move(built.stock));
            else
                m_pieceTrouble = QString::fromStdString(built.problems.front().message);
        } else if (refused != rack->refused.end()) {
            m_pieceTrouble = QString::fromStdString(refused->message);
        } else {
            m_pieceTrouble = tr("The rack has no piece called “%1”.").arg(QString::fromStdString(m_piece));
        }
    } else if (!m_piece.empty() && m_named.empty()) {
        m_pieceTrouble = tr("No rack is named, so the piece cannot be drawn. Name the rack's file first.");
    }
    return before || m_stock || m_pieceTrouble != troubleBefore;
}

} // namespace pw::gui
