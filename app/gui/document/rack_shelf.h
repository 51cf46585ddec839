#pragma once

#include "app/gui/document/document.h"
#include "app/gui/document/rack_document.h"
#include "geometry/placement/stock.h"

#include <filesystem>
#include <map>
#include <memory>
#include <mutex>
#include <QObject>
#include <QString>

namespace pw::gui {

/// The rack that the open job names, as it stands in the window: what is edited there counts at once. Racks
/// that were open before stay, each with its history, so that nothing goes with the job.
class RackShelf : public QObject {
    Q_OBJECT

public:
    explicit RackShelf(Document& document, QObject* parent = nullptr);

    /// What is edited; null while the job names no rack, or one that cannot be read.
    RackDocument* rack() const { return m_rack; }
    /// The file that the job names; empty when it names none.
    const std::filesystem::path& file() const { return m_file; }
    /// Takes this rack for the job, as one step of it; begins it where there is no such file.
    util::Status use(const std::filesystem::path& file);
    /// Where a rack for this job would lie: beside it. Empty when the job itself has no place yet.
    std::filesystem::path besideJob() const;
    /// Writes what rests unwritten; those that could not be written come back.
    std::vector<RackDocument*> flush();

    /// Null while the job names no rack, or one that cannot be read. May be asked from any thread.
    std::shared_ptr<const rack::RackReading> reading() const;
    /// The piece that the job names, mm, its own coordinates; null when there is none to lay under the plate.
    std::shared_ptr<const placement::Stock> stock() const { return m_stock; }
    /// Why the rack cannot be read; empty when all is well.
    const QString& rackTrouble() const { return m_rackTrouble; }
    /// Is that because the rack lies outside the job's folder (engine::rackToRead)? Then it waits for
    /// allow().
    bool isOutside() const { return m_isOutside; }
    /// The person says that this rack may be read, now and whenever a job names it.
    void allow();
    /// Why the piece cannot be drawn; empty when all is well, or when it is the rack that cannot be read.
    const QString& pieceTrouble() const { return m_pieceTrouble; }

    /// Reads the file again if somebody has written it since.
    void look();

Q_SIGNALS:
    void changed();
    /// The rack's file was written, or could not be.
    void fileChanged(RackDocument* rack);
    /// What somebody else has written stands here now.
    void taken(RackDocument* rack);

private:
    void jobChanged();
    bool readFile();
    bool findPiece();
    void rackChanged();

    Document& m_document;
    mutable std::mutex m_mutex; ///< over m_reading
    std::shared_ptr<const rack::RackReading> m_reading;
    std::shared_ptr<const placement::Stock> m_stock;
    QString m_rackTrouble, m_pieceTrouble;
    bool m_isOutside = false;
    std::string m_named, m_piece;
    std::filesystem::path m_file;
    std::map<std::filesystem::path, RackDocument*> m_racks; ///< all that were read so far
    RackDocument* m_rack = nullptr;
};

} // namespace pw::gui
