#include "app/cli/rack_command.h"

#include "app/cli/ahead.h"
#include "app/cli/bad_input.h"
#include "app/cli/read_job.h"
#include "app/engine/propose.h"
#include "app/engine/rack.h"
#include "app/engine/rack_place.h"
#include "app/engine/write.h"
#include "core/jobfile/json.h"
#include "core/jobfile/read.h"
#include "core/rack/rack_file.h"

#include <ostream>

namespace pw::cli {

namespace {

constexpr int kGood = 0, kWeak = 1;

} // namespace

rack::RackReading readRackFile(const std::filesystem::path& file, std::ostream& err) {
    const auto tree = rack::loadRackTree(file);
    if (!tree)
        throw BadInput{util::toText(tree.problem()) + "\n"};
    rack::RackReading reading = rack::readRack(*tree);
    if (!reading.problems.empty())
        throw BadInput{file.string() + ": " + util::toText(reading.problems) + "\n"};
    for (const std::string& key : reading.unknownKeys)
        err << "note: " << file.string() << ": not known and left alone: " << key << "\n";
    return reading;
}

std::filesystem::path rackFor(const job::Job& job, const std::string& jobFile, const std::string& given) {
    if (!given.empty())
        return given;
    const auto named = engine::rackToRead(job, jobFile);
    if (!named)
        throw BadInput{jobFile + ": " + util::toText(named.problem()) +
                       " If it is yours, give it with the command: --rack FILE\n"};
    return *named;
}

int doRack(const std::string& jobFile, const std::string& rackFile, const std::string& prefer, bool json,
           std::ostream& out, std::ostream& err) {
    const job::Job job = readJob(jobFile, err);
    const std::filesystem::path file = rackFor(job, jobFile, rackFile);
    if (file.empty())
        throw BadInput{jobFile +
                       ": no rack is named. Give --rack FILE, or name one in the job under \"rack\".\n"};
    const rack::RackReading rack = readRackFile(file, err);
    engine::RackOptions options;
    if (!prefer.empty())
        options.prefer = *engine::preferFrom(prefer);
    sayAhead(job, engine::WorkOn::Rack, err, engine::kindsOf(rack.rack));
    const engine::RackAnswer answer = engine::rankRack(job, rack, options);
    out << (json ? jobfile::toJson(engine::toTree(answer)) : engine::toWords(answer));
    return answer.best.empty() ? kWeak : kGood;
}

int doPropose(const std::string& jobFile, bool json, std::ostream& out, std::ostream& err) {
    sayAhead(readJob(jobFile, err), engine::WorkOn::Propose, err);
    const auto tree = jobfile::loadTree(jobFile);
    if (!tree)
        throw BadInput{util::toText(tree.problem()) + "\n"};
    const engine::Proposals proposals = engine::propose(*tree);
    out << (json ? jobfile::toJson(engine::toTree(proposals)) : engine::toWords(proposals));
    return !proposals.best.empty() && engine::mayBeMade(proposals.best.front().grade) ? kGood : kWeak;
}

} // namespace pw::cli
