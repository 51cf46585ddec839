#include "app/gui/models/piece_cut.h"

#include "app/gui/models/field_text.h"
#include "app/gui/models/piece_choice.h"
#include "app/gui/models/sentence.h"
#include "core/thread/thread.h"
#include "geometry/outline/build.h"
#include "geometry/placement/spacing.h"

#include <algorithm>
#include <cmath>
#include <QCoreApplication>

namespace pw::gui {

using jobfile::Tree;

namespace {

/// A place as the job keeps it is the ranking's own within so much, mm and radians.
constexpr double kSame = 0.02, kSameTurn = 1e-4;

class Words {
    Q_DECLARE_TR_FUNCTIONS(pw::gui::PieceCut)
};

shape::Region plateOf(const job::Job& job) {
    std::optional<units::Length> tapped;
    if (const auto thread = thread::parse(job.plate.boreThread))
        tapped = thread::tappingDrill(*thread);
    return outline::buildRegion(job, tapped).region;
}

bool isSame(const placement::Pose& a, const placement::Pose& b) {
    return shape::distance(a.at, b.at) < kSame && std::abs(a.turn - b.turn) < kSameTurn;
}

} // namespace

Tree laidOn(Tree job, const rack::RackReading& rack, const RackRow& row) {
    const auto offcut = std::ranges::find(rack.rack.offcuts, row.row, &rack::Offcut::row);
    if (offcut == rack.rack.offcuts.end())
        return job;
    if (!row.answer || !row.answer->place)
        return onPieceNamed(std::move(job), &rack, offcut->name);
    for (const auto& [path, value] : engine::changesFor(*row.answer, *offcut)) {
        if (value.isNull())
            job.erase(path);
        else
            job.set(path, value);
    }
    return job;
}

util::Result<PieceCut> cutPiece(const job::Job& job, const Tree& rack, const rack::RackReading& reading,
                                const engine::PieceAnswer* ranked) {
    const auto problem = [](const QString& words) { return util::Problem{"", words.toStdString()}; };
    const auto under = engine::pieceUnder(job, reading);
    const auto offcut = job.piece
                            ? std::ranges::find(reading.rack.offcuts, job.piece->name, &rack::Offcut::name)
                            : reading.rack.offcuts.end();
    if (!under || offcut == reading.rack.offcuts.end())
        return problem(Words::tr("No piece of the rack lies under the plan."));
    if (!under->fits)
        return problem(under->trouble.empty() ? Words::tr("The plate is not known yet, so it cannot be cut.")
                                              : local(under->trouble));
    engine::PieceAnswer answer;
    answer.row = offcut->row;
    answer.name = offcut->name;
    answer.stock = placement::buildStock(*offcut).stock;
    answer.spacing = placement::spacingFor(job, rack::soundThickness(*offcut));
    answer.place.emplace();
    if (job.piece->at)
        answer.place->pose.at = {job.piece->at->x.mm(), job.piece->at->y.mm()};
    if (job.piece->turn)
        answer.place->pose.turn = job.piece->turn->radian();
    if (ranked && ranked->place && isSame(ranked->place->pose, answer.place->pose)) {
        answer.place = ranked->place;
        answer.others = ranked->others;
    }
    PieceCut cut;
    engine::Cutting cutting = engine::cutFrom(rack, *offcut, plateOf(job), answer);
    cut.rack = std::move(cutting.rack);
    cut.isLast = offcut->count <= 1;
    const QString name = QString::fromStdString(offcut->name);
    QStringList rests;
    for (const std::string& rest : cutting.rests)
        rests << Words::tr("“%1”", "name of a piece").arg(QString::fromStdString(rest));
    if (rests.isEmpty())
        cut.words = Words::tr("Cut from “%1”; nothing usable is left of it.").arg(name);
    else if (rests.size() == 1)
        cut.words = Words::tr("Cut from “%1”. Its rest is on the rack as %2.").arg(name, rests.front());
    else
        cut.words = Words::tr("Cut from “%1”. It fell into parts; they are on the rack as %2.")
                        .arg(name, rests.join(QStringLiteral(", ")));
    for (const std::string& word : cutting.words)
        cut.words += QLatin1Char(' ') + asSentence(word);
    if (offcut->count > 1)
        cut.words += QLatin1Char(' ') + Words::tr("%n of its kind are left whole.", "", offcut->count - 1);
    return cut;
}

} // namespace pw::gui
