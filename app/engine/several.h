#pragma once

#include "app/engine/write.h"

#include <string>
#include <vector>

namespace pw::engine {

/// A rectangle to cut from, and how it is called.
struct Piece {
    units::Length wide, high;
    std::string words; ///< "300 mm x 400 mm"
};

/// "300 x 400 mm", "12 in x 2 ft". The problem says how to write it.
util::Result<Piece> pieceOf(const std::string& text);

/// Gives every plate its place on the piece, in rows; each must have passed refusalOf.
util::Status setOutOn(std::vector<PlacedPlate>& plates, const Piece& piece);

/// "plate.json: its middle at X 85 mm, Y 85 mm, turned by a quarter".
std::string placeWords(const PlacedPlate& plate);

} // namespace pw::engine
