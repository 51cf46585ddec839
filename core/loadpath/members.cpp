#include "core/loadpath/members.h"

#include "core/util/say.h"

namespace pw::loadpath {

job::Into intoOf(const job::Job& job) {
    if (job.screw && job.screw->into)
        return *job.screw->into;
    return job.plate.boreThread.empty() ? job::Into::Shaft : job::Into::Plate;
}

job::Turns turnsOf(const job::Job& job) {
    if (job.screw && job.screw->turns)
        return *job.screw->turns;
    return intoOf(job) == job::Into::Plate ? job::Turns::Screw : job::Turns::Nut;
}

bool hasNut(const job::Job& job) {
    return turnsOf(job) == job::Turns::Nut || intoOf(job) == job::Into::Nut;
}

bool hasScrew(const job::Job& job) {
    return job.screw || job.work.value_or(job::Work::Compress) == job::Work::Compress ||
           !job.plate.boreThread.empty();
}

bool screwPushes(const job::Job& job) {
    const job::Into into = intoOf(job);
    return job.work == job::Work::Pull && hasScrew(job) &&
           (into == job::Into::Plate || (turnsOf(job) == job::Turns::Screw && into != job::Into::Shaft));
}

std::optional<Length> nutHeightOf(const job::Job& job, const Members& members) {
    if (job.screw && job.screw->nutHeight)
        return job.screw->nutHeight;
    if (members.thread)
        if (const auto hexagon = thread::standardHexagon(*members.thread))
            return hexagon->nutHeight;
    return std::nullopt;
}

util::Result<material::Material> orScrap(const job::Given<job::Material>& given, Length thickness) {
    job::Material scrap;
    scrap.name = "unknown scrap";
    return material::resolve(given.value_or(scrap), thickness);
}

Members membersOf(const job::Job& job) {
    Members members;
    const job::Screw screw = job.screw.value_or(job::Screw{});
    const auto wrong = [&](const std::string& field, const util::Problem& problem) {
        members.problems.push_back({field, problem.message});
    };
    std::string name = screw.thread;
    std::string field = "screw.thread";
    if (name.empty() && !job.plate.boreThread.empty()) {
        name = job.plate.boreThread;
        field = "plate.bore_thread";
    }
    if (!name.empty()) {
        if (auto thread = thread::parse(name))
            members.thread = *thread;
        else
            wrong(field, thread.problem());
    }
    if (members.thread && !screw.thread.empty() && !job.plate.boreThread.empty() &&
        intoOf(job) == job::Into::Plate)
        if (const auto bore = thread::parse(job.plate.boreThread); bore && !(*bore == *members.thread))
            members.problems.push_back(
                {"screw.thread", say("%1 does not go into a bore tapped %2; give both the same thread",
                                     {members.thread->name, bore->name})});
    if (members.thread) {
        if (screw.grade.empty())
            members.assumptions.push_back(say("screw grade not given: taken as the weakest sold"));
        if (auto grade =
                material::findScrewGrade(screw.grade.empty() ? "unknown" : screw.grade, *members.thread))
            members.screw = *grade;
        else
            wrong("screw.grade", grade.problem());
        if (hasNut(job)) {
            if (screw.nutGrade.empty())
                members.assumptions.push_back(say("nut grade not given: taken as the weakest sold"));
            if (auto grade = material::findNutGrade(screw.nutGrade.empty() ? "unknown" : screw.nutGrade,
                                                    *members.thread))
                members.nut = *grade;
            else
                wrong("screw.nut_grade", grade.problem());
        }
    }
    if (auto steel = orScrap(job.plate.steel, job.plate.thickness.value_or(Length())))
        members.plate = *steel;
    else
        wrong("plate.steel", steel.problem());
    const job::Into into = intoOf(job);
    if (members.thread && (into == job::Into::Shaft || into == job::Into::Bar)) {
        std::optional<job::Material> given = screw.intoMaterial;
        if (!given && into == job::Into::Bar && job.back)
            given = job.back->steel;
        if (!given && into == job::Into::Shaft && job.hub)
            given = job.hub->shaftMaterial;
        if (!given)
            members.assumptions.push_back(say("steel the screw goes into not given: taken as unknown scrap"));
        if (auto steel = orScrap(given))
            members.into = *steel;
        else
            wrong("screw.into_material", steel.problem());
    }
    return members;
}

} // namespace pw::loadpath
