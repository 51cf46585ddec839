#pragma once

#include "app/gui/document/document.h"
#include "core/rack/read_rack.h"
#include "geometry/placement/stock.h"

#include <filesystem>
#include <memory>
#include <mutex>
#include <QObject>
#include <QString>

namespace pw::gui {

/// The rack that the open job names, as its file has it. It is read when the job names another one, or when
/// the file turns out to have changed; nobody who paints has to wait for it.
class RackShelf : public QObject {
    Q_OBJECT

public:
    explicit RackShelf(Document& document, QObject* parent = nullptr);

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

private:
    void jobChanged();
    bool readFile();
    bool findPiece();

    Document& m_document;
    mutable std::mutex m_mutex; ///< over m_reading
    std::shared_ptr<const rack::RackReading> m_reading;
    std::shared_ptr<const placement::Stock> m_stock;
    QString m_rackTrouble, m_pieceTrouble;
    bool m_isOutside = false;
    std::string m_named, m_piece;
    std::filesystem::path m_file;
    std::filesystem::file_time_type m_written;
};

} // namespace pw::gui
