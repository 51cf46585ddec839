#include "app/engine/several.h"

#include "core/units/parse.h"
#include "core/util/say.h"

#include <algorithm>

namespace pw::engine {

util::Result<Piece> pieceOf(const std::string& text) {
    const auto wrong = [&] {
        return util::Problem{
            "", say("not the size of a piece: \"%1\". Write it like \"300 x 400 mm\" or \"12 in x "
                    "20 in\"",
                    {text})};
    };
    const std::size_t by = text.find('x');
    if (by == std::string::npos)
        return wrong();
    const std::string first = text.substr(0, by), second = text.substr(by + 1);
    const auto high = units::parse<units::Length>(second);
    if (!high)
        return wrong();
    // The unit after the second figure is meant for both.
    const std::string unit = second.substr(std::min(second.find_last_of("0123456789.") + 1, second.size()));
    const bool said = units::hasUnit(units::Kind::Length, first);
    const auto wide = units::parse<units::Length>(said ? first : first + unit);
    const bool inch = unit.find_first_of("if\"") != std::string::npos;
    constexpr double kMost = 1e5; // mm
    if (!wide || !(wide->mm() > 0) || !(high->mm() > 0) || wide->mm() > kMost || high->mm() > kMost)
        return wrong();
    const units::System system = inch ? units::System::Inch : units::System::Metric;
    return Piece{*wide, *high,
                 units::plainBlanks(units::written(*wide, system) + " x " + units::written(*high, system))};
}

util::Status setOutOn(std::vector<PlacedPlate>& plates, const Piece& piece) {
    std::vector<shape::Region> regions;
    double gap = 0;
    for (const PlacedPlate& plate : plates) {
        gap = std::max(gap, gapBetween(plate.job));
        regions.push_back(*plate.report.region);
    }
    const auto places = outline::setOut(regions, piece.wide.mm(), piece.high.mm(), gap);
    if (!places)
        return places.problem();
    for (std::size_t i = 0; i < plates.size(); ++i)
        plates[i].place = (*places)[i];
    return util::Done{};
}

std::string placeWords(const PlacedPlate& plate) {
    const auto said = [&](double mm) {
        return units::plainBlanks(units::show(units::Length::fromMm(mm), plate.job.preferred));
    };
    const std::string word = say(verdict::wordOf(plate.report.grade).data()), x = said(plate.place.at.x),
                      y = said(plate.place.at.y);
    return plate.place.turn != 0 ? say("%1, its middle at X %2, Y %3, turned by a quarter", {word, x, y})
                                 : say("%1, its middle at X %2, Y %3", {word, x, y});
}

} // namespace pw::engine
