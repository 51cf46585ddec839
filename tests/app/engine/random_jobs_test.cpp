// Whole checks of random jobs: never a crash or a figure that is no number, the same answer in either system
// of units, and never a better one for more load. Conversions: 25.4 mm to the inch, 4.4482216152605 N to the
// pound force, both exact (NIST SP 811).
#include "app/engine/check.h"
#include "app/engine/report_json.h"
#include "core/jobfile/json.h"
#include "core/jobfile/read.h"
#include "tests/support/random_designs.h"

#include <gtest/gtest.h>

using namespace pw;
using namespace pw::engine;
using jobfile::Tree;
using verdict::Grade;

namespace {

constexpr std::uint32_t kJobsSeed = 731;
constexpr int kJobs = 24;

/// Writes every figure in one system.
struct Writer {
    bool inch = false;

    static std::string text(double value, const char* unit) {
        char digits[64];
        std::snprintf(digits, sizeof digits, "%.10f", value); // tests run in the C locale
        return std::string(digits) + " " + unit;
    }
    std::string length(double mm) const { return inch ? text(mm / 25.4, "in") : text(mm, "mm"); }
    std::string force(double n) const { return inch ? text(n / 4.4482216152605, "lbf") : text(n, "N"); }
    std::string stress(double mpa) const {
        return inch ? text(mpa * 25.4 * 25.4 / 4.4482216152605 / 1000, "ksi") : text(mpa, "MPa");
    }
};

/// The figures of a job in mm, N, MPa.
struct Figures {
    int shape = 0, stations = 2;
    double circle = 0, room = 0, start = 0, load = 0, thickness = 0, bore = 0, yield = 0, edge = 0;
    bool lopsided = false, bolted = false;
};

Figures anyFigures(pw::testing::RandomDesigns& random) {
    Figures f;
    f.shape = random.pick(4);
    f.stations = f.shape == 0   ? 2 + random.pick(11)
                 : f.shape == 1 ? 2
                 : f.shape == 2 ? 4
                                : 3 + random.pick(3);
    f.circle = random.between(35, 80);
    f.room = std::min({random.between(9, 16), 0.45 * 2 * f.circle * std::sin(std::numbers::pi / f.stations),
                       0.3 * f.circle});
    f.load = random.between(1000, 15000);
    f.thickness = random.between(4, 25);
    f.bore = random.between(0.15, 0.35) * f.circle;
    f.yield = random.between(180, 500);
    f.edge = random.between(3, 12);
    f.lopsided = f.stations > 2 && random.pick(6) == 0;
    f.bolted = random.pick(6) == 0;
    return f;
}

Tree jobTree(const Figures& f, const Writer& in) {
    Tree t = Tree::object();
    t["platewright"] = 1;
    t["work"] = "compress";
    Tree& stations = t["stations"] = Tree::object();
    stations["count"] = f.stations;
    stations["circle"] = in.length(2 * f.circle);
    if (f.shape == 2)
        stations["start"] = "45 deg";
    stations["access_hole"] = in.length(1.2 * f.room);
    stations["land"] = in.length(1.8 * f.room);
    stations["keeper"] = in.length(0.7 * f.room);
    if (f.lopsided) {
        Tree& loaded = stations["loaded"] = Tree::list();
        for (int i = 0; i < f.stations; ++i)
            loaded.push(i > 0);
    }
    t.set("load.total", in.force(f.load));
    Tree outline = Tree::object();
    const double reach = f.circle + f.room + f.edge;
    if (f.shape == 0) {
        outline["shape"] = "disc";
        outline["diameter"] = in.length(2 * reach);
    } else if (f.shape == 1) {
        outline["shape"] = "bar";
        outline["length"] = in.length(2 * reach);
        outline["width"] = in.length(2 * (std::max(f.room, 0.6 * f.bore) + f.edge));
        outline["ends"] = f.edge > 7 ? "round" : "square";
    } else if (f.shape == 2) {
        outline["shape"] = "rectangle";
        const double side = 2 * (f.circle * std::sqrt(0.5) + f.room + f.edge);
        outline["length"] = in.length(side);
        outline["width"] = in.length(side);
        outline["corner"] = in.length(f.edge);
    } else {
        outline["shape"] = "polygon";
        Tree& points = outline["points"] = Tree::list();
        for (int i = 0; i < f.stations; ++i)
            for (double side : {-1.0, 1.0}) {
                const shape::Point p =
                    shape::rotated({reach, side * (f.room + f.edge)}, 2 * std::numbers::pi * i / f.stations);
                Tree& point = (points.push(Tree::list()), points.items()->back());
                point.push(in.length(p.x));
                point.push(in.length(p.y));
            }
    }
    t.set("plate.outline", std::move(outline));
    t.set("plate.thickness", in.length(f.thickness));
    t.set("plate.bore", in.length(f.bore));
    if (f.bolted) { // a bolt hole between the first two stations
        const shape::Point p = shape::polar(0.62 * f.circle, std::numbers::pi / f.stations);
        t.set("plate.holes[0].at[0]", in.length(p.x));
        t.set("plate.holes[0].at[1]", in.length(p.y));
        t.set("plate.holes[0].diameter", in.length(4));
    }
    t.set("plate.steel.name", "test steel");
    t.set("plate.steel.yield", in.stress(f.yield));
    t.set("plate.steel.ultimate", in.stress(1.5 * f.yield));
    t.set("plate.steel.E", in.stress(200000));
    t.set("centre.bearing_inside", in.length(f.bore));
    t.set("centre.bearing_outside", in.length(f.bore + 0.8 * (2 * (f.circle - f.room) - f.bore)));
    return t;
}

Report checked(const Figures& f, const Writer& in) {
    const jobfile::Reading reading = jobfile::readJob(jobTree(f, in));
    EXPECT_TRUE(reading.problems.empty()) << util::toText(reading.problems);
    CheckOptions options;
    options.mend = false;
    return check(reading.job, options);
}

void expectFinite(const Tree& tree, const std::string& path) {
    if (const double* number = tree.number()) {
        EXPECT_TRUE(std::isfinite(*number)) << path;
    }
    if (const Tree::List* items = tree.items())
        for (std::size_t i = 0; i < items->size(); ++i)
            expectFinite((*items)[i], path + "[" + std::to_string(i) + "]");
    if (const Tree::Object* members = tree.members())
        for (const auto& [key, value] : *members)
            expectFinite(value, path + "." + key);
}

void expectNear(const Found<double>& a, const Found<double>& b, double part, double least, const char* what) {
    ASSERT_EQ(a.has_value(), b.has_value()) << what;
    if (a) {
        EXPECT_NEAR(*a, *b, std::max(part * std::abs(*b), least)) << what;
    }
}

} // namespace

TEST(RandomJobs, AreCheckedWithFiniteFiguresAndAlikeInEitherSystemOfUnits) {
    std::printf("seed %u\n", kJobsSeed);
    pw::testing::RandomDesigns random(kJobsSeed);
    int answered = 0;
    for (int i = 0; i < kJobs; ++i) {
        const Figures f = anyFigures(random);
        const std::string json = jobfile::toJson(jobTree(f, {}));
        SCOPED_TRACE(json);
        const Report metric = checked(f, {false}), inch = checked(f, {true});
        expectFinite(toTree(metric), "report");
        expectFinite(toTree(inch), "report");
        EXPECT_EQ(metric.grade, inch.grade) << metric.reason << " | " << inch.reason;
        EXPECT_TRUE(metric.grade != Grade::Incomplete || !metric.problems.empty() || !metric.missing.empty())
            << metric.reason; // no answer without saying why
        answered += metric.grade != Grade::Incomplete;
        // Two meshes may differ by how a length was rounded: as sector against whole plate.
        expectNear(metric.plate.collapseFactor, inch.plate.collapseFactor, 0.01, 0, "collapse");
        expectNear(metric.plate.setMm, inch.plate.setMm, 0.03, 0.001, "set");
        ASSERT_EQ(metric.plate.field.has_value(), inch.plate.field.has_value());
        if (metric.plate.field) {
            expectNear(metric.plate.field->deflectionMm, inch.plate.field->deflectionMm, 0.005, 3e-5,
                       "deflection"); // it is that of station 1, which may be the one that hangs
            expectNear(metric.plate.field->peakStressMpa, inch.plate.field->peakStressMpa, 0.02, 0, "peak");
        }
    }
    std::printf("%d of %d answered\n", answered, kJobs);
    EXPECT_GT(answered, kJobs * 3 / 4);
}

TEST(RandomJobs, MoreLoadNeverGivesABetterVerdict) {
    pw::testing::RandomDesigns random(kJobsSeed + 1);
    for (int i = 0; i < kJobs / 2; ++i) {
        Figures f = anyFigures(random);
        f.lopsided = false;
        SCOPED_TRACE(jobfile::toJson(jobTree(f, {})));
        const Report once = checked(f, {});
        f.load *= 1.6;
        const Report more = checked(f, {});
        EXPECT_GE(more.grade, once.grade);
        ASSERT_EQ(once.plate.collapseFactor.has_value(), more.plate.collapseFactor.has_value());
        if (!once.plate.collapseFactor)
            continue;
        EXPECT_NEAR(*more.plate.collapseFactor * 1.6, *once.plate.collapseFactor,
                    0.01 * *once.plate.collapseFactor);
        if (once.plate.setMm && more.plate.setMm) {
            EXPECT_GE(*more.plate.setMm, *once.plate.setMm - 1e-9);
        }
        ASSERT_TRUE(once.plate.firstYieldFactor && more.plate.firstYieldFactor);
        // Rounding may tip a triangle of a symmetric mesh the other way.
        EXPECT_NEAR(*more.plate.firstYieldFactor * 1.6, *once.plate.firstYieldFactor,
                    0.01 * *once.plate.firstYieldFactor);
    }
}
