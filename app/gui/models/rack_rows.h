#pragma once

#include "app/engine/rack.h"

#include <memory>
#include <QString>
#include <QStringList>
#include <vector>

/// The rack as the lines of a list: what there is, ranked as far as that is known, as plain data.
namespace pw::gui {

/// What was ranked, and the rack as it was then. It may be another one now.
struct RankedRack {
    std::shared_ptr<const engine::RackAnswer> answer; ///< null: nothing is ranked
    std::shared_ptr<const rack::RackReading> reading;
};

/// A piece to scale: its own coordinates, mm.
struct StockPicture {
    placement::Stock stock;
    std::vector<shape::Region> plates; ///< where they would be cut
};

struct RackRow {
    enum class Kind {
        Heading,
        Piece,
        Mend, ///< left out for a wrong figure, or because none is left
    };
    Kind kind = Kind::Heading;
    QString title{};        ///< the heading, or the piece's name
    std::size_t row = 0;    ///< of `offcuts` in the file
    QString measured{};     ///< "3 pieces, 12.1 mm, S235"
    QString where{};        ///< "rack, second shelf"
    QString figures{};      ///< what would be made of it: "1.62 kg, leaves as much as a piece of ..."
    QString said{};         ///< what is short, what is wrong
    QStringList remarks{};  ///< what else there is to know
    QString reason{};       ///< of the verdict, a sentence
    StockPicture picture{}; ///< empty where its figures describe none
    bool ranked = false;    ///< what follows is known
    bool fits = false;
    verdict::Grade grade = verdict::Grade::Incomplete;
    std::optional<double> margin{};                      ///< over what is wanted
    std::shared_ptr<const engine::PieceAnswer> answer{}; ///< of a ranked piece
};

/// All rows under their headings: what is owned and will do, what may be bought, what fits and would not
/// hold, what does not fit, what has to be mended. Pieces that have changed since they were ranked, and new
/// ones, stand by themselves until they are ranked.
std::vector<RackRow> rackRows(const rack::RackReading& reading, const RankedRack& ranked,
                              units::System system);

/// One line for those who cannot see the row: all of it in words.
QString spokenRow(const RackRow& row);

/// The one scale of all pictures, px per mm, for pictures of this size: the largest piece fits, unless that
/// made the plate, or a piece of the usual size, too small to make out; what is larger is then cut off at
/// the edge.
double pictureScale(const std::vector<RackRow>& rows, double width, double height);

/// A margin over what is wanted, as the check rows show theirs: "4.9 ×".
QString timesWanted(double margin);

} // namespace pw::gui
