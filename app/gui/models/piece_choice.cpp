#include "app/gui/models/piece_choice.h"

#include "app/engine/rack.h"
#include "app/gui/models/field_text.h"
#include "core/jobfile/read.h"
#include "core/thread/thread.h"
#include "geometry/outline/build.h"
#include "geometry/placement/spacing.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <QCoreApplication>

namespace pw::gui {

using jobfile::Tree;

namespace {

/// A hand is waiting; a place that is not found by then is looked for on the plan.
constexpr std::chrono::milliseconds kPatience(400);
/// Thicknesses as measured differ by so much without meaning anything, mm.
constexpr double kSame = 0.05;

class Words {
    Q_DECLARE_TR_FUNCTIONS(pw::gui::PieceChoice)
};

const rack::Offcut* offcutNamed(const rack::RackReading* rack, const std::string& name) {
    if (!rack)
        return nullptr;
    const auto found = std::ranges::find(rack->rack.offcuts, name, &rack::Offcut::name);
    return found == rack->rack.offcuts.end() ? nullptr : &*found;
}

placement::Placement placeOn(const job::Job& job, const rack::Offcut& offcut) {
    placement::Placement place;
    const placement::BuiltStock stock = placement::buildStock(offcut);
    std::optional<units::Length> tapped;
    if (const auto thread = thread::parse(job.plate.boreThread))
        tapped = thread::tappingDrill(*thread);
    const outline::Built plate = outline::buildRegion(job, tapped);
    if (!stock.problems.empty())
        return place;
    const shape::Box box = shape::bounds(stock.stock.rim);
    place.pose.at = (box.low + box.high) * 0.5;
    if (!plate.ok())
        return place;
    placement::FitOptions options;
    options.thorough = false;
    options.stop = [until = std::chrono::steady_clock::now() + kPatience] {
        return std::chrono::steady_clock::now() > until;
    };
    const auto answer = placement::fitPlate(
        plate.region, stock.stock, placement::spacingFor(job, rack::soundThickness(offcut)), options);
    // A bore that the piece would bring along is the rack's own search to propose, not a side effect here.
    if (answer.place && !answer.place->bore)
        place.pose = answer.place->pose;
    return place;
}

QString thicknessRemark(const Tree& tree, const rack::Offcut& offcut, units::System system) {
    const job::Job job = jobfile::readJob(tree).job;
    const units::Length piece = rack::soundThickness(offcut);
    if (!job.plate.thickness || std::abs(piece.mm() - job.plate.thickness->mm()) < kSame)
        return {};
    return Words::tr("This piece is %1 thick, and the plate is worked out at %2.")
        .arg(local(units::show(piece, system)), local(units::show(*job.plate.thickness, system)));
}

} // namespace

Field withRack(Field field, const Tree& tree, const RackState& rack, units::System system) {
    if (field.path == "rack") {
        field.remark = rack.rackTrouble;
    } else if (field.path == "piece.name") {
        field.remark = rack.pieceTrouble;
        field.choices.clear();
        if (rack.reading)
            for (const rack::Offcut& offcut : rack.reading->rack.offcuts) {
                const QString name = QString::fromStdString(offcut.name);
                field.choices.emplace_back(name, name);
            }
        if (const auto* offcut = offcutNamed(rack.reading.get(), textAt(tree, "piece.name")))
            if (field.remark.isEmpty())
                field.remark = thicknessRemark(tree, *offcut, system);
        field.put = [reading = rack.reading](Tree& t, const Tree& value) {
            if (value.text() && !value.text()->empty())
                t = onPieceNamed(std::move(t), reading.get(), *value.text());
            else
                t.erase("piece");
        };
    }
    return field;
}

Tree onPieceNamed(Tree tree, const rack::RackReading* rack, const std::string& name) {
    const auto* offcut = offcutNamed(rack, name);
    if (!offcut) {
        tree.set("piece.name", name);
        return tree;
    }
    engine::PieceAnswer answer;
    answer.name = name;
    answer.thickness = rack::soundThickness(*offcut);
    answer.place = placeOn(jobfile::readJob(tree).job, *offcut);
    for (const auto& [path, value] : engine::changesFor(answer, *offcut)) {
        if (value.isNull())
            tree.erase(path);
        else
            tree.set(path, value);
    }
    return tree;
}

} // namespace pw::gui
