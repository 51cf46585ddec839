#include "core/jobfile/json.h"
#include "core/jobfile/read.h"
#include "core/rack/read_rack.h"
#include "core/units/parse.h"
#include "tests/support/jobs.h"

#include <cmath>
#include <gtest/gtest.h>

/// The limits of DEVELOPERS.md ("How much is too much"): what lies just inside is taken, what lies just
/// outside gets an error that names the field and the limit.
namespace pw::jobfile {
namespace {

struct Limit {
    const char* field;
    std::size_t most;
    Tree (*made)(std::size_t count);
};

Tree listOf(std::size_t count, const Tree& item) {
    return Tree(Tree::List(count, item));
}

Tree corners(std::size_t count) {
    Tree::List points;
    for (std::size_t i = 0; i < count; ++i)
        points.push_back(Tree::List{50 * std::cos(6.283 * double(i) / double(count)),
                                    50 * std::sin(6.283 * double(i) / double(count))});
    return Tree::Object{{"shape", "polygon"}, {"points", std::move(points)}};
}

std::vector<util::Problem> about(const std::string& field, const Reading& reading) {
    std::vector<util::Problem> found;
    for (const util::Problem& problem : reading.problems)
        if (problem.field.starts_with(field))
            found.push_back(problem);
    return found;
}

TEST(Limits, JustInsideIsTakenAndJustOutsideIsNamed) {
    const Limit limits[] = {
        {"title", 10000, [](std::size_t n) { return Tree(std::string(n, 't')); }},
        {"notes", 200000, [](std::size_t n) { return Tree(std::string(n, 'n')); }},
        {"rack", 10000, [](std::size_t n) { return Tree(std::string(n, 'r')); }},
        {"stations.at", 200,
         [](std::size_t n) {
             return listOf(n, Tree::List{10, 0});
         }},
        {"stations.count", 200, [](std::size_t n) { return Tree(static_cast<double>(n)); }},
        {"stations.loaded", 200, [](std::size_t n) { return listOf(n, true); }},
        {"stations.readings", 1000,
         [](std::size_t n) {
             return listOf(n, Tree::Object{{"pins", Tree::List{1, 2}}, {"over", "60 mm"}});
         }},
        {"springs", 20, [](std::size_t n) { return listOf(n, Tree::object()); }},
        {"springs[0].loads", 50,
         [](std::size_t n) {
             return listOf(n, Tree::Object{{"length", "60 mm"}, {"force", "700 N"}});
         }},
        {"plate.holes", 500,
         [](std::size_t n) {
             return listOf(n, Tree::Object{{"at", Tree::List{0, 0}}, {"diameter", 3}});
         }},
        {"plate.outline", 2000, corners},
        {"keep_clear", 500,
         [](std::size_t n) {
             return listOf(n, Tree::Object{{"at", Tree::List{0, 0}}, {"diameter", 3}});
         }},
    };
    for (const Limit& limit : limits) {
        SCOPED_TRACE(limit.field);
        Tree tree = testing::treeOf(R"({"platewright": 1, "work": "compress"})");
        tree.set(limit.field, limit.made(limit.most));
        const Reading inside = readJob(tree);
        EXPECT_TRUE(about(limit.field, inside).empty()) << util::toText(inside.problems);
        tree.set(limit.field, limit.made(limit.most + 1));
        const auto outside = about(limit.field, readJob(tree));
        ASSERT_EQ(outside.size(), 1u);
        EXPECT_NE(outside[0].message.find(std::to_string(limit.most)), std::string::npos)
            << outside[0].message;
    }
}

TEST(Limits, AsManyKeysInAGroupAsAnyJobHasAndNoMore) {
    const auto group = [](int count) {
        std::string text = "{";
        for (int i = 0; i < count; ++i)
            text += (i ? ", \"k" : "\"k") + std::to_string(i) + "\": 1";
        return text + "}";
    };
    EXPECT_TRUE(fromJson(group(1000)));
    const auto refused = fromJson(group(1001));
    ASSERT_FALSE(refused);
    EXPECT_NE(refused.problem().message.find("more than 1000 keys"), std::string::npos)
        << refused.problem().message;
    // It took minutes to look for keys that stand twice in a group as large as a file may be.
    EXPECT_FALSE(fromJson(group(300000)));
}

TEST(Limits, AFigureHasEightyCharactersAtMost) {
    EXPECT_TRUE(units::parse<units::Length>(std::string(77, '0') + "1mm"));
    EXPECT_FALSE(units::parse<units::Length>(std::string(78, '0') + "1mm"));
}

Tree rackOf(std::size_t count, const std::string& name) {
    Tree tree = testing::treeOf(R"({"platewright_rack": 1})");
    const Tree piece = Tree::Object{{"name", name},
                                    {"thickness", "12 mm"},
                                    {"outline", Tree::Object{{"shape", "disc"}, {"diameter", "200 mm"}}}};
    tree["offcuts"] = listOf(count, piece);
    return tree;
}

TEST(Limits, ARackHasTwentyThousandPiecesAtMost) {
    // All of one name, which took a time as the square of their number.
    const auto inside = rack::readRack(rackOf(20000, "old door"));
    EXPECT_TRUE(inside.problems.empty());
    ASSERT_EQ(inside.rack.offcuts.size(), 20000u);
    EXPECT_EQ(inside.rack.offcuts.back().name, "old door (20000)");
    const auto outside = rack::readRack(rackOf(20001, ""));
    ASSERT_EQ(outside.problems.size(), 1u);
    EXPECT_EQ(outside.problems[0].field, "offcuts");
    EXPECT_NE(outside.problems[0].message.find("20000"), std::string::npos) << outside.problems[0].message;
}

TEST(Limits, OfAPieceToo) {
    const auto with = [](const std::string& key, Tree value) {
        Tree tree = rackOf(1, "door");
        tree.set("offcuts[0]." + key, std::move(value));
        return rack::readRack(tree);
    };
    const Tree spot =
        Tree::Object{{"points", Tree::List{Tree::List{0, 0}, Tree::List{9, 0}, Tree::List{0, 9}}}};
    const Tree hole = Tree::Object{{"at", Tree::List{0, 0}}, {"diameter", 3}};
    EXPECT_TRUE(with("bad_areas", listOf(200, spot)).refused.empty());
    EXPECT_TRUE(with("holes", listOf(500, hole)).refused.empty());
    EXPECT_TRUE(with("count", 10000).refused.empty());
    EXPECT_TRUE(with("note", std::string(10000, 'n')).refused.empty());
    const std::pair<const char*, Tree> outside[] = {{"bad_areas", listOf(201, spot)},
                                                    {"holes", listOf(501, hole)},
                                                    {"count", 10001},
                                                    {"note", std::string(10001, 'n')}};
    for (const auto& [key, value] : outside) {
        const auto reading = with(key, value);
        ASSERT_EQ(reading.refused.size(), 1u) << key;
        EXPECT_EQ(reading.refused[0].field, std::string("offcuts[0].") + key);
    }
}

} // namespace
} // namespace pw::jobfile
