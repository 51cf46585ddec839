#include "app/engine/flange_checks.h"

#include "core/loadpath/flange.h"
#include "core/units/format.h"
#include "core/util/say.h"

namespace pw::engine {

namespace {

using loadpath::incompleteCheck;
using verdict::Check;
using verdict::CheckKind;

constexpr const char* kBending = PW_SAY("Flange under the jaws");
constexpr const char* kBearing = PW_SAY("Pressure under the jaws");

Check openBending(const std::string& why) {
    return incompleteCheck("flange.bending", "flange", say(kBending), CheckKind::Force, why);
}
Check openBearing(const std::string& why) {
    return incompleteCheck("jaws.bearing", "flange", say(kBearing), CheckKind::Force, why);
}

/// The flange's own material, else the hub's, else the weakest that hubs are cast of.
job::Material materialOf(const job::Hub& hub, std::vector<std::string>& assumptions) {
    if (hub.flange && hub.flange->material)
        return *hub.flange->material;
    if (hub.hubMaterial) {
        assumptions.push_back(say("The flange's material is not given: taken as the hub's."));
        return *hub.hubMaterial;
    }
    assumptions.push_back(say("The flange's material is not given: taken as grey cast iron, the weakest "
                              "grade. A file leaves grey dust on it; steel gives bright curls."));
    job::Material iron;
    iron.name = "cast iron";
    return iron;
}

} // namespace

std::vector<Check> flangeChecks(const job::Job& job, units::Force design, double s,
                                std::vector<std::string>& assumptions, const FlangeCheckOptions& options,
                                std::optional<FlangeField>* fieldOut) {
    if (!job.hub || (!job.hub->flange && !job.hub->jaws) || (!job.hub->jaws && job.hub->bolts))
        return {};
    const job::Hub& hub = *job.hub;
    const auto noFlange = loadpath::missingForFlange(hub), noJaws = loadpath::missingForJaws(hub);
    std::vector<Check> checks;
    if (noFlange)
        checks.push_back(openBending(*noFlange));
    if (noJaws) {
        checks.push_back(openBearing(*noJaws));
        return checks;
    }
    const job::Jaws& jaws = *hub.jaws;
    const auto material =
        material::resolve(materialOf(hub, assumptions),
                          hub.flange ? hub.flange->thickness.value_or(units::Length()) : units::Length());
    if (!material) {
        if (!noFlange)
            checks.push_back(openBending(material.problem().message));
        checks.push_back(openBearing(material.problem().message));
        return checks;
    }
    const loadpath::FlangeDemands demands{s, options.strengthFactor, job.screw && job.screw->hammering,
                                          job.preferred};
    if (noFlange) {
        if (*jaws.count >= 1)
            checks.push_back(
                loadpath::jawBearingCheck(units::Force::fromN(jawShare(*jaws.count, design.newton()).force),
                                          *jaws.width, *jaws.overlap, *material, demands));
        return checks;
    }

    FlangeTask task{hub.flange->outside->mm(),
                    hub.flange->root->mm(),
                    hub.flange->thickness->mm(),
                    *material,
                    *jaws.count,
                    jaws.width->mm(),
                    jaws.overlap->mm(),
                    design.newton()};
    task.material.E = task.material.E * options.stiffnessFactor;
    task.material.yield = task.material.yield * options.strengthFactor;
    const auto field = solveFlange(task, options.field);
    if (!field) {
        const std::string why = util::toText(field.problem());
        return {openBending(why), openBearing(why)};
    }
    const auto perJaw = units::Force::fromN(field->jaw.force);
    if (field->fullRing)
        assumptions.push_back(say("The jaws cover all but a twentieth of the flange's rim or more: they are "
                                  "taken to pull evenly all round, as a split ring does."));
    else if (field->jaw.oneSlack)
        assumptions.push_back(
            say("One of %1 jaws may be slack: each of the rest is taken to carry %2 (common practice).",
                {task.jaws, units::show(perJaw, job.preferred)}));
    else
        assumptions.push_back(
            say("%1 jaws share the pull evenly: seat all of them before pulling.", {task.jaws}));
    const double rootRadius = task.root / 2, peakRadius = shape::norm(field->peakAt);
    loadpath::FlangeFindings findings{units::Stress::fromMpa(field->vonMises),
                                      units::Stress::fromMpa(field->principal),
                                      field->errorPercent,
                                      field->settled,
                                      peakRadius - rootRadius < 0.25 * (task.outside / 2 - rootRadius),
                                      field->fullRing,
                                      field->jaw.oneSlack,
                                      task.jaws,
                                      perJaw,
                                      field->collapseFactor,
                                      field->collapseReached};
    checks.push_back(loadpath::flangeBendingCheck(findings, *material, demands));
    checks.push_back(loadpath::jawBearingCheck(perJaw, *jaws.width, *jaws.overlap, *material, demands));
    checks.push_back(loadpath::flangeShearCheck(perJaw, task.jaws, *hub.flange->root, *hub.flange->thickness,
                                                *jaws.width, *jaws.overlap, *material, demands));
    if (fieldOut)
        *fieldOut = *field;
    return checks;
}

} // namespace pw::engine
