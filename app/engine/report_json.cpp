#include "app/engine/report_json.h"

#include "app/engine/tree_parts.h"

namespace pw::engine {

namespace {

using jobfile::Tree;

Tree mm(const Found<units::Length>& value) {
    return value ? number(value->mm()) : Tree();
}
Tree newton(const Found<units::Force>& value) {
    return value ? number(value->newton()) : Tree();
}
Tree newtonM(const Found<units::Torque>& value) {
    return value ? number(value->newtonM()) : Tree();
}

Tree pair(double low, double high) {
    return Tree::List{number(low), number(high)};
}

Tree checkTree(const verdict::Check& check) {
    Tree t = Tree::object();
    t["id"] = check.id;
    t["member"] = check.member;
    t["verdict"] = verdict::wordOf(check.grade);
    t["demand"] = number(check.demand);
    t["capacity"] = number(check.capacity);
    t["unit"] = check.unit;
    t["margin"] = number(check.margin);
    t["wanted"] = number(check.wanted);
    t["basis"] = check.basis;
    t["source"] = check.source;
    return t;
}

Tree loadTree(const LoadReport& load) {
    Tree t = Tree::object();
    t["total_N"] = load.total ? pair(load.total->low.newton(), load.total->high.newton()) : Tree();
    t["per_station_N"] =
        load.perStation ? pair(load.perStation->low.newton(), load.perStation->high.newton()) : Tree();
    t["energy_J"] = load.energy ? number(load.energy->joule()) : Tree();
    t["source"] = load.source.empty() ? Tree() : Tree(load.source);
    return t;
}

Tree fieldTree(const FieldReport& field) {
    Tree t = Tree::object();
    t["peak_stress_MPa"] = number(field.peakStressMpa);
    t["peak_at_mm"] = pair(field.peakAt.x, field.peakAt.y);
    t["bore_edge_stress_MPa"] = number(field.boreEdgeStressMpa);
    t["access_hole_stress_MPa"] = number(field.accessHoleStressMpa);
    t["deflection_mm"] = number(field.deflectionMm);
    t["error_percent"] = number(field.errorPercent);
    t["settled"] = field.settled;
    t["residual"] = number(field.trust.residual);
    t["imbalance"] = number(std::max(field.trust.imbalance, field.trust.held));
    t["tipping"] = number(field.trust.tipping);
    t["mesh_percent"] = number(field.trust.meshPercent);
    t["unknowns"] = field.unknowns;
    t["sector_of"] = field.sectorOf;
    t["solve_ms"] = number(field.solveMs);
    return t;
}

Tree pointTree(const PointReport& p) {
    Tree t = Tree::object();
    t["x"] = number(p.x);
    t["y"] = number(p.y);
    const auto value = [&](double v) { return p.inside ? number(v) : Tree(); };
    t["w_mm"] = value(p.w);
    t["Mx"] = value(p.Mx);
    t["My"] = value(p.My);
    t["Mxy"] = value(p.Mxy);
    t["stress_top_MPa"] =
        p.inside ? Tree(Tree::List{number(p.stress[0]), number(p.stress[1]), number(p.stress[2])}) : Tree();
    t["von_mises_MPa"] = value(p.vonMises);
    return t;
}

Tree plateTree(const PlateReport& plate) {
    Tree t = Tree::object();
    if (plate.byBook) {
        Tree& book = t["by_book"] = Tree::object();
        book["moment_Nmm_per_mm"] = number(plate.byBook->momentNmmPerMm);
        book["stress_MPa"] = number(plate.byBook->stressMpa);
        book["deflection_mm"] = number(plate.byBook->deflectionMm);
        book["ligament_efficiency"] = number(plate.byBook->ligamentEfficiency);
    } else {
        t["by_book"] = Tree();
    }
    t["field"] = plate.field ? fieldTree(*plate.field) : Tree();
    t["first_yield_factor"] = number(plate.firstYieldFactor);
    t["collapse_factor"] = number(plate.collapseFactor);
    t["collapse_is_lower_bound"] = plate.collapseIsLowerBound;
    t["set_mm"] = number(plate.setMm);
    t["set_at_proof_mm"] = number(plate.setAtProofMm);
    t["mass_kg"] = number(plate.massKg);
    Tree& spread = t["spread"] = Tree::list();
    for (const PlateReport::Spread& row : plate.spread) {
        Tree item = Tree::object();
        item["what"] = row.what;
        item["peak_stress_MPa"] = number(row.peakStressMpa);
        item["deflection_mm"] = number(row.deflectionMm);
        spread.push(std::move(item));
    }
    Tree& points = t["points"] = Tree::list();
    for (const PointReport& p : plate.points)
        points.push(pointTree(p));
    Tree& curve = t["curve"] = Tree::list();
    for (const PlateReport::CurvePoint& p : plate.curve)
        curve.push(pair(p.factor, p.deflectionMm));
    return t;
}

Tree cardTree(const Card& card) {
    Tree t = Tree::object();
    Tree& rows = t["rows"] = Tree::list();
    for (const CardRow& row : card.rows) {
        Tree item = Tree::object();
        item["turns"] = number(row.turns);
        item["squeeze_mm"] = mm(row.squeeze);
        item["load_N"] = pair(row.load.low.newton(), row.load.high.newton());
        item["torque_Nm"] = pair(row.torque.low.newtonM(), row.torque.high.newtonM());
        item["reading_mm"] = row.reading ? pair(row.reading->low.mm(), row.reading->high.mm()) : Tree();
        rows.push(std::move(item));
    }
    t["notes"] = texts(card.notes);
    return t;
}

} // namespace

jobfile::Tree toTree(const Report& report) {
    Tree t = Tree::object();
    t["platewright"] = 1;
    t["title"] = report.title;
    t["verdict"] = verdict::wordOf(report.grade);
    t["reason"] = report.reason;
    t["weakest"] = report.weakest.empty() ? Tree() : Tree(report.weakest);
    t["load"] = loadTree(report.load);
    Tree& checks = t["checks"] = Tree::list();
    for (const verdict::Check& check : report.checks)
        checks.push(checkTree(check));
    t["plate"] = plateTree(report.plate);
    Tree& screw = t["screw"] = Tree::object();
    screw["torque_Nm"] = newtonM(report.screw.torque);
    screw["torque_range_Nm"] = report.screw.torqueRange ? pair(report.screw.torqueRange->low.newtonM(),
                                                               report.screw.torqueRange->high.newtonM())
                                                        : Tree();
    screw["stop_torque_Nm"] = newtonM(report.screw.stopTorque);
    screw["stop_pressure_MPa"] =
        report.screw.stopPressure ? number(report.screw.stopPressure->mpa()) : Tree();
    screw["rated_load_N"] = newton(report.screw.ratedLoad);
    screw["stamp_N"] = newton(report.screw.stamp);
    screw["k_factor"] =
        report.screw.kFactor ? pair(report.screw.kFactor->low, report.screw.kFactor->high) : Tree();
    Tree& hub = t["hub"] = Tree::object();
    const HubReport& fit = report.hub;
    hub["pressure_MPa"] = fit.pressure ? pair(fit.pressure->low.mpa(), fit.pressure->high.mpa()) : Tree();
    hub["pull_N"] = fit.pull ? pair(fit.pull->low.newton(), fit.pull->high.newton()) : Tree();
    hub["heat_to_free_C"] =
        fit.heatToFree ? pair(fit.heatToFree->low.celsius(), fit.heatToFree->high.celsius()) : Tree();
    hub["jump_J"] = fit.jump ? number(fit.jump->joule()) : Tree();
    hub["remarks"] = texts(fit.remarks);
    Tree& travel = t["travel"] = Tree::object();
    travel["release_mm"] = mm(report.travel.release);
    travel["to_solid_mm"] = mm(report.travel.toSolid);
    travel["thread_left_mm"] = mm(report.travel.threadLeft);
    travel["thread_needed_mm"] = mm(report.travel.threadNeeded);
    Tree& moments = travel["moments"] = Tree::list();
    for (const loadpath::ThreadMoment& moment : report.travel.moments) {
        Tree item = Tree::object();
        item["when"] = moment.when;
        item["engaged_mm"] = number(moment.engaged.mm());
        item["to_end_mm"] = number(moment.toEnd.mm());
        item["to_shank_mm"] = mm(moment.toShank);
        moments.push(std::move(item));
    }
    Tree& proof = t["proof"] = Tree::object();
    proof["load_N"] = newton(report.proof.load);
    proof["torque_Nm"] = newtonM(report.proof.torque);
    proof["reading_mm"] = mm(report.proof.reading);
    proof["reading_at_mm"] = mm(report.proof.readingAt);
    proof["return_within_mm"] = number(report.proof.returnWithin.mm());
    Tree& gauge = t["gauge"] = Tree::list();
    for (const GaugeRow& row : report.gauge) {
        Tree item = Tree::object();
        item["what"] = row.what;
        item["load_N"] = number(row.load.newton());
        item["reading_mm"] = number(row.reading.mm());
        gauge.push(std::move(item));
    }
    t["card"] = cardTree(report.card);
    t["assumptions"] = texts(report.assumptions);
    t["cautions"] = texts(report.cautions);
    t["steps"] = texts(report.steps);
    Tree& missing = t["missing"] = Tree::list();
    for (const Missing& m : report.missing) {
        Tree item = Tree::object();
        item["field"] = m.field;
        item["how"] = m.how;
        missing.push(item);
    }
    Tree& problems = t["problems"] = Tree::list();
    for (const util::Problem& p : report.problems) {
        Tree item = Tree::object();
        item["field"] = p.field;
        item["message"] = p.message;
        problems.push(item);
    }
    Tree& changes = t["changes"] = Tree::list();
    for (const Change& c : report.changes) {
        Tree item = Tree::object();
        item["check"] = c.check;
        item["do"] = c.what;
        item["field"] = c.field;
        item["value"] = c.value;
        item["leaves"] = verdict::wordOf(c.leaves);
        changes.push(item);
    }
    return t;
}

} // namespace pw::engine
