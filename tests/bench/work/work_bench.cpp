#include "app/engine/check.h"
#include "app/engine/work_estimate.h"
#include "core/jobfile/json.h"
#include "core/jobfile/read.h"
#include "tests/support/jobs.h"

#include <cmath>
#include <cstdio>
#include <ctime>
#include <filesystem>
#include <random>
#include <sys/resource.h>

/// How long checks take beside what is foretold of them (app/engine/work_estimate): the samples, and one of
/// them with more and more holes that spoil its symmetry. Job files may be named instead.

namespace {

using namespace pw;
namespace fs = std::filesystem;

double processorSeconds() {
    timespec now{};
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &now);
    return double(now.tv_sec) + 1e-9 * double(now.tv_nsec);
}

void row(const std::string& name, const job::Job& job) {
    const double begin = processorSeconds();
    const engine::WorkEstimate work = engine::estimateWork(job);
    const double asked = processorSeconds() - begin;
    engine::CheckOptions options;
    options.mend = false;
    const engine::Report report = engine::check(job, options);
    const double took = processorSeconds() - begin - asked;
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    std::printf("%-28s %7d %4d %5d %9.3f %9.3f %6.2f  %7.0f %7.0f   %.3f %s\n", name.c_str(), work.unknowns,
                work.sectorOf, work.holes, work.seconds, took, work.seconds / took, work.megabytes,
                double(usage.ru_maxrss) / 1024, asked, report.reason.substr(0, 40).c_str());
    std::fflush(stdout);
}

/// Small holes in the open steel of the six-pin disc, made larger with their number.
job::Job withHoles(int count, double across) {
    jobfile::Tree tree = testing::sampleTree("mill_lane_six_pin");
    tree.set("plate.outline.diameter", std::to_string(across) + " mm");
    const job::Job plain = testing::jobOf(tree);
    std::mt19937 random(5);
    const auto even = [&](double low, double high) { return low + (high - low) * (random() / 4294967296.0); };
    std::vector<shape::Point> taken;
    while (static_cast<int>(taken.size()) < count) {
        const shape::Point p = shape::polar(even(30, across / 2 - 4), even(0, 2 * M_PI));
        bool free = true;
        for (int i = 0; i < 6; ++i)
            free &= shape::distance(p, shape::polar(55, i * M_PI / 3)) > 20;
        for (const shape::Point& other : taken)
            free &= shape::distance(p, other) > 5;
        if (!free)
            continue;
        const std::string at = "plate.holes[" + std::to_string(taken.size()) + "]";
        tree.set(at + ".at", jobfile::Tree::List{p.x, p.y});
        tree.set(at + ".diameter", 3);
        taken.push_back(p);
    }
    return testing::jobOf(tree);
}

} // namespace

int main(int argc, char** argv) {
    std::printf("%-28s %7s %4s %5s %9s %9s %6s  %7s %7s   %s\n", "plate", "unknown", "1/", "holes",
                "foretold", "took", "ratio", "MB", "MB so far", "asking");
    for (int i = 1; i < argc; ++i) {
        const auto tree = jobfile::loadTree(argv[i]);
        if (!tree)
            return std::fprintf(stderr, "%s\n", util::toText(tree.problem()).c_str()), 2;
        row(fs::path(argv[i]).filename().string(), testing::jobOf(*tree));
    }
    if (argc > 1)
        return 0;
    for (const auto& entry : fs::directory_iterator(PW_SAMPLES))
        if (entry.path().string().ends_with(".plate.json"))
            row(entry.path().stem().stem().string(), testing::jobOf(*jobfile::loadTree(entry.path())));
    for (const int count : {1, 3, 10, 30})
        row(std::to_string(count) + " holes, 160 mm", withHoles(count, 160));
    for (const int count : {30, 60, 100})
        row(std::to_string(count) + " holes, 300 mm", withHoles(count, 300));
}
