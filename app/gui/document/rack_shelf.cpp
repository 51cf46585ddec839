#include "app/gui/document/rack_shelf.h"

#include "app/engine/rack.h"
#include "app/engine/rack_place.h"
#include "app/gui/settings/settings.h"
#include "core/rack/rack_file.h"

#include <algorithm>

namespace pw::gui {

namespace {

std::filesystem::file_time_type writtenAt(const std::filesystem::path& file) {
    std::error_code error;
    const auto time = std::filesystem::last_write_time(file, error);
    return error ? std::filesystem::file_time_type{} : time;
}

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
    if (m_file.empty() || writtenAt(m_file) == m_written)
        return;
    readFile();
    m_stock.reset();
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
    m_written = writtenAt(m_file);
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
        const auto tree = rack::loadRackTree(m_file);
        auto read = std::make_shared<rack::RackReading>(tree ? rack::readRack(*tree) : rack::RackReading{});
        if (!tree || !read->problems.empty())
            trouble = tr("The rack %1 cannot be read: %2")
                          .arg(name, QString::fromStdString(tree ? util::toText(read->problems)
                                                                 : tree.problem().message));
        else
            reading = std::move(read);
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
