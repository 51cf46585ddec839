#include "app/gui/models/rack_rows.h"

#include "app/engine/write.h"

#include "app/gui/models/field_text.h"
#include "app/gui/models/sentence.h"
#include "app/gui/widgets/verdict_head.h"
#include "geometry/placement/stock.h"

#include <algorithm>
#include <map>
#include <QCoreApplication>
#include <set>

namespace pw::gui {

namespace {

using units::Length;
using units::System;

class Words {
    Q_DECLARE_TR_FUNCTIONS(pw::gui::RackRows)
};

QString lengthWords(Length value, System system) {
    return local(units::show(value, system));
}

QString measuredWords(const rack::Offcut& offcut, System system) {
    QStringList words;
    if (offcut.count > 1)
        words << Words::tr("%n pieces", "", offcut.count);
    const Length sound = rack::soundThickness(offcut);
    const bool asIs = sound == offcut.thickness.low && sound == offcut.thickness.high;
    words << (asIs ? lengthWords(sound, system) : Words::tr("counted as %1").arg(lengthWords(sound, system)));
    const QString steel = offcut.steel ? QString::fromStdString(offcut.steel->name) : QString();
    switch (offcut.steelIs) {
    case rack::SteelIs::Known:
        words << steel;
        break;
    case rack::SteelIs::Guessed:
        words << Words::tr("%1 by guess").arg(steel);
        break;
    case rack::SteelIs::Unknown:
        words << Words::tr("steel unknown");
        break;
    }
    return words.join(QStringLiteral(", "));
}

StockPicture pictureOf(const engine::PieceAnswer& piece, const shape::Region& plate) {
    StockPicture picture{piece.stock, {}};
    const auto lay = [&](const placement::Placement& place) {
        shape::Region laid;
        laid.rim = placement::placed(plate.rim, place.pose);
        for (const shape::Hole& hole : plate.holes)
            laid.holes.push_back({placement::placed(hole.loop, place.pose), hole.part, hole.index});
        picture.plates.push_back(std::move(laid));
    };
    if (piece.place)
        lay(*piece.place);
    for (const placement::Placement& other : piece.others)
        lay(other);
    return picture;
}

/// Whole square centimetres, or tenths of a square inch: more is not known of scrap.
QString wasteWords(double mm2, System system) {
    constexpr double kMm2PerCm2 = 100, kMm2PerIn2 = units::kMmPerInch * units::kMmPerInch;
    return system == System::Inch
               ? local(units::number(std::round(mm2 / kMm2PerIn2 * 10) / 10, 4)) + QStringLiteral("\u00a0in²")
               : local(units::number(std::round(mm2 / kMm2PerCm2), 6)) + QStringLiteral("\u00a0cm²");
}

QString figureWords(const engine::PieceAnswer& piece, System system) {
    QStringList words;
    if (piece.massKg)
        words << local(units::show(units::Mass::fromKg(*piece.massKg), system));
    if (piece.place) {
        words << (piece.place->usable > 0
                      ? Words::tr("leaves as much as a piece of %1")
                            .arg(local(engine::asPiece(piece.place->usable, system)))
                      : Words::tr("leaves nothing usable"));
    }
    if (piece.place)
        words << Words::tr("waste %1").arg(wasteWords(piece.place->waste, system));
    if (piece.cutMinutes)
        words << Words::tr("%1 min to cut")
                     .arg(local(units::number(*piece.cutMinutes, 2)))
                     .replace(QStringLiteral(" min"), QStringLiteral("\u00a0min")); // never parted
    return words.join(QStringLiteral(", "));
}

/// What a piece is told apart by; that another one was put before it changes nothing.
rack::Offcut withoutRow(rack::Offcut offcut) {
    offcut.row = 0;
    return offcut;
}

class Rows {
public:
    Rows(const rack::RackReading& reading, const RankedRack& ranked, System system)
        : m_reading(reading), m_ranked(ranked), m_system(system) {}

    std::vector<RackRow> all() {
        std::map<std::string, const rack::Offcut*> open;
        for (const rack::Offcut& offcut : m_reading.rack.offcuts)
            open.emplace(offcut.name, &offcut);
        if (m_ranked.answer && m_ranked.reading)
            addRanked(open);
        addUnranked(open);
        addMends();
        return std::move(m_rows);
    }

private:
    void head(const QString& words) {
        if (words != m_heading)
            m_rows.push_back({.kind = RackRow::Kind::Heading, .title = words});
        m_heading = words;
    }

    static QString headingOf(const engine::PieceAnswer& piece) {
        if (!piece.fits)
            return Words::tr("No room for the plate");
        if (piece.grade == verdict::Grade::Incomplete)
            return Words::tr("There is room, and the verdict is not known");
        if (!engine::mayBeMade(piece.grade))
            return Words::tr("There is room, and it would not hold");
        return piece.owned ? Words::tr("On the rack, and it will do") : Words::tr("To buy, and it will do");
    }

    RackRow rowOf(const rack::Offcut& offcut) const {
        RackRow row{.kind = RackRow::Kind::Piece,
                    .title = QString::fromStdString(offcut.name),
                    .row = offcut.row,
                    .measured = measuredWords(offcut, m_system),
                    .where = QString::fromStdString(offcut.where)};
        if (!offcut.owned)
            row.where = row.where.isEmpty() ? Words::tr("to buy") : Words::tr("to buy, %1").arg(row.where);
        return row;
    }

    void addRanked(std::map<std::string, const rack::Offcut*>& open) {
        std::map<std::size_t, const rack::Offcut*> then;
        for (const rack::Offcut& offcut : m_ranked.reading->rack.offcuts)
            then.emplace(offcut.row, &offcut);
        for (const engine::PieceAnswer& piece : m_ranked.answer->pieces) {
            const auto now = open.find(piece.name);
            const auto before = then.find(piece.row);
            if (now == open.end() || before == then.end() ||
                withoutRow(*now->second) != withoutRow(*before->second))
                continue;
            head(headingOf(piece));
            RackRow row = rowOf(*now->second);
            row.ranked = true;
            row.fits = piece.fits;
            row.grade = piece.grade;
            row.margin = piece.margin;
            row.picture = pictureOf(piece, m_ranked.answer->plate);
            if (piece.fits) {
                row.figures = figureWords(piece, m_system);
                row.reason = local(piece.reason);
            }
            row.said = asSentence(piece.shortOf);
            for (const std::string& remark : piece.remarks)
                row.remarks << asSentence(remark);
            if (!piece.note.empty())
                row.remarks << asSentence(piece.note);
            auto answer = std::make_shared<engine::PieceAnswer>(piece);
            answer->row = now->second->row;
            row.answer = std::move(answer);
            m_rows.push_back(std::move(row));
            open.erase(now);
        }
    }

    void addUnranked(const std::map<std::string, const rack::Offcut*>& open) {
        const bool some = m_ranked.answer && !m_rows.empty();
        for (const bool owned : {true, false})
            for (const rack::Offcut& offcut : m_reading.rack.offcuts) {
                if (!open.contains(offcut.name) || offcut.owned != owned)
                    continue;
                placement::BuiltStock built = placement::buildStock(offcut);
                if (!built.problems.empty()) {
                    RackRow mend = rowOf(offcut);
                    mend.kind = RackRow::Kind::Mend;
                    mend.said = asSentence(built.problems.front().message);
                    m_mends.push_back(std::move(mend));
                    continue;
                }
                head(some    ? Words::tr("Not ranked yet")
                     : owned ? Words::tr("On the rack")
                             : Words::tr("To buy"));
                RackRow row = rowOf(offcut);
                row.picture.stock = std::move(built.stock);
                if (!offcut.note.empty())
                    row.remarks << asSentence(offcut.note);
                m_rows.push_back(std::move(row));
            }
    }

    void addMends() {
        for (const rack::Remark& remark : m_reading.refused) {
            const auto same = std::ranges::find(m_mends, remark.row, &RackRow::row);
            if (same == m_mends.end())
                m_mends.push_back({.kind = RackRow::Kind::Mend,
                                   .title = QString::fromStdString(remark.name),
                                   .row = remark.row,
                                   .said = troubleWords(remark)});
            else
                same->remarks << troubleWords(remark);
        }
        std::ranges::stable_sort(m_mends, {}, &RackRow::row);
        if (!m_mends.empty())
            head(Words::tr("Left out until a figure is mended"));
        std::ranges::move(m_mends, std::back_inserter(m_rows));
        addUsedUp();
    }

    /// Their count says that none is left; they are not forgotten for that.
    void addUsedUp() {
        std::set<std::size_t> shown;
        for (const RackRow& row : m_rows)
            if (row.kind != RackRow::Kind::Heading)
                shown.insert(row.row);
        for (const rack::Remark& remark : m_reading.mended)
            if (remark.field.ends_with(".count") && !shown.contains(remark.row)) {
                head(Words::tr("None left"));
                m_rows.push_back({.kind = RackRow::Kind::Mend,
                                  .title = QString::fromStdString(remark.name),
                                  .row = remark.row,
                                  .said = Words::tr("Its count is nought.")});
            }
    }

    /// "thickness: is missing; measure it at the thinnest place"
    static QString troubleWords(const rack::Remark& remark) {
        const auto dot = remark.field.find("].");
        const std::string field = dot == std::string::npos ? std::string() : remark.field.substr(dot + 2);
        static const std::map<std::string, const char*> kNames{
            {"thickness", QT_TRANSLATE_NOOP("pw::gui::RackRows", "Thickness: %1")},
            {"pitting", QT_TRANSLATE_NOOP("pw::gui::RackRows", "Pits: %1")},
            {"steel", QT_TRANSLATE_NOOP("pw::gui::RackRows", "Steel: %1")},
            {"count", QT_TRANSLATE_NOOP("pw::gui::RackRows", "Count: %1")},
            {"outline", QT_TRANSLATE_NOOP("pw::gui::RackRows", "Outline: %1")},
            {"holes", QT_TRANSLATE_NOOP("pw::gui::RackRows", "Holes: %1")},
            {"bad_areas", QT_TRANSLATE_NOOP("pw::gui::RackRows", "Bad areas: %1")}};
        const auto name = kNames.find(field.substr(0, field.find_first_of(".[")));
        return asSentence(name == kNames.end()
                              ? remark.message
                              : Words::tr(name->second).arg(local(remark.message)).toStdString());
    }

    const rack::RackReading& m_reading;
    const RankedRack& m_ranked;
    System m_system;
    QString m_heading;
    std::vector<RackRow> m_rows, m_mends;
};

} // namespace

std::vector<RackRow> rackRows(const rack::RackReading& reading, const RankedRack& ranked, System system) {
    return Rows(reading, ranked, system).all();
}

QString timesWanted(double margin) {
    return Words::tr("%1 ×").arg(local(units::number(margin, 2)));
}

QString spokenRow(const RackRow& row) {
    if (row.kind == RackRow::Kind::Heading)
        return row.title;
    QStringList words{row.title};
    if (row.ranked && row.fits) {
        words << verdictWord(row.grade);
        if (row.margin)
            words << Words::tr("%1 what is wanted").arg(timesWanted(*row.margin));
    }
    for (const QString& part : {row.measured, row.where, row.figures, row.said})
        if (!part.isEmpty())
            words << part;
    words << row.remarks;
    return words.join(QStringLiteral(", "));
}

double pictureScale(const std::vector<RackRow>& rows, double width, double height) {
    std::vector<double> scales;
    double plate = 0;
    for (const RackRow& row : rows) {
        if (row.picture.stock.rim.size() < 2)
            continue;
        const shape::Box box = shape::bounds(row.picture.stock.rim);
        scales.push_back(std::min(width / std::max(box.width(), 1.0), height / std::max(box.height(), 1.0)));
        for (const shape::Region& laid : row.picture.plates) {
            const shape::Box on = shape::bounds(laid.rim);
            plate = std::max({plate, on.width(), on.height()});
        }
    }
    if (scales.empty())
        return 1;
    std::ranges::sort(scales);
    constexpr double kPlateShare = 0.4; // of the picture's height, at least
    const double usual = scales[scales.size() / 8];
    const double least = plate > 0 ? std::min(kPlateShare * height / plate, usual) : usual;
    return std::max(scales.front(), least);
}

} // namespace pw::gui
