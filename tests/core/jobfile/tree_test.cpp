#include "core/jobfile/tree.h"

#include "core/util/require.h"

#include <gtest/gtest.h>

namespace pw::jobfile {
namespace {

Tree ring() {
    Tree tree;
    tree.set("stations.count", 6);
    tree.set("stations.circle", "100 mm");
    tree.set("springs[0].loads[1].force", "700 N");
    return tree;
}

TEST(Tree, SettingAPathMakesTheGroupsAndRowsOnTheWay) {
    const Tree tree = ring();
    ASSERT_NE(tree.at("springs[0].loads[1].force"), nullptr);
    EXPECT_EQ(*tree.at("springs[0].loads[1].force")->text(), "700 N");
    EXPECT_TRUE(tree.at("springs[0].loads[0]")->isNull());
    EXPECT_EQ(*tree.at("stations.count")->number(), 6);
}

TEST(Tree, AnAbsentPathIsNull) {
    const Tree tree = ring();
    EXPECT_EQ(tree.at("stations.land"), nullptr);
    EXPECT_EQ(tree.at("springs[1]"), nullptr);
    EXPECT_EQ(tree.at("stations.count.deeper"), nullptr);
    EXPECT_EQ(tree.at("stations[0]"), nullptr);
}

TEST(Tree, KeysKeepTheOrderInWhichTheyWereWritten) {
    Tree tree;
    tree["zebra"] = 1;
    tree["ant"] = 2;
    tree["zebra"] = 3;
    ASSERT_EQ(tree.members()->size(), 2u);
    EXPECT_EQ(tree.members()->front().first, "zebra");
    EXPECT_EQ(*tree.members()->front().second.number(), 3);
}

TEST(Tree, ErasingTheLastMemberTakesTheEmptyGroupWithIt) {
    Tree tree = ring();
    EXPECT_TRUE(tree.erase("stations.count"));
    EXPECT_NE(tree.at("stations"), nullptr);
    EXPECT_TRUE(tree.erase("stations.circle"));
    EXPECT_EQ(tree.at("stations"), nullptr);
}

TEST(Tree, ErasingInARowLeavesTheRowsAfterItInTheirPlaces) {
    Tree tree;
    tree.set("springs[0].wire", "4 mm");
    tree.set("springs[1].wire", "3 mm");
    EXPECT_TRUE(tree.erase("springs[0].wire"));
    EXPECT_EQ(*tree.at("springs[1].wire")->text(), "3 mm");
    EXPECT_TRUE(tree.erase("springs[0]"));
    EXPECT_EQ(*tree.at("springs[0].wire")->text(), "3 mm");
}

TEST(Tree, ErasingWhatIsNotThereChangesNothing) {
    Tree tree = ring();
    const Tree before = tree;
    EXPECT_FALSE(tree.erase("plate.thickness"));
    EXPECT_FALSE(tree.erase("springs[3]"));
    EXPECT_FALSE(tree.erase("stations.count.deeper"));
    EXPECT_EQ(tree, before);
}

TEST(Tree, AValueThatIsNoGroupBecomesOneWhenAMemberIsSet) {
    Tree tree;
    tree.set("plate", 5);
    tree.set("plate.thickness", "12 mm");
    EXPECT_EQ(*tree.at("plate.thickness")->text(), "12 mm");
}

TEST(Tree, APathThatCannotBeReadIsOurOwnMistake) {
    Tree tree;
    EXPECT_THROW(tree.set("springs[x]", 1), util::Bug);
    EXPECT_THROW(tree.set("springs[0", 1), util::Bug);
    EXPECT_THROW(tree.set("a..b", 1), util::Bug);
    EXPECT_THROW(tree.set("a[99999999999]", 1), util::Bug);
}

} // namespace
} // namespace pw::jobfile
