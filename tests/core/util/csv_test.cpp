#include "core/util/csv.h"

#include "core/util/embedded.h"
#include "core/util/require.h"

#include <gtest/gtest.h>

using namespace pw::util;

namespace {

TEST(Table, CellsAreFoundByTheNameOfTheirColumn) {
    const auto rows = readCsv("# remark\nname,value,source\n\"a, b\",1.5,\"says \"\"so\"\"\"\r\nc,,\n");
    ASSERT_EQ(rows.size(), 2u);
    EXPECT_EQ(rows[0].text("name"), "a, b");
    EXPECT_DOUBLE_EQ(rows[0].number("value"), 1.5);
    EXPECT_EQ(rows[0].text("source"), "says \"so\"");
    EXPECT_FALSE(rows[1].numberIfAny("value").has_value());
    EXPECT_THROW(rows[1].number("value"), Bug);
    EXPECT_THROW(rows[1].text("colour"), Bug);
}

TEST(Table, ARowThatDoesNotFitItsHeadIsABug) {
    EXPECT_THROW(readCsv("a,b\n1\n"), Bug);
    EXPECT_THROW(readCsv("a,b\n1,2,3\n"), Bug);
    EXPECT_THROW(readCsv("a\n\"open\n"), Bug);
    EXPECT_THROW(readCsv("a\n1x\n").front().number("a"), Bug);
}

TEST(Table, AListInACellIsSplitAtSemicolons) {
    EXPECT_EQ(splitList(" a b ;c;; "), (std::vector<std::string>{"a b", "c"}));
    EXPECT_TRUE(splitList("").empty());
}

TEST(Table, EveryBuiltInRowNamesItsSource) {
    for (const char* file : {"materials.csv", "screw_grades.csv", "nut_grades.csv", "threads.csv",
                             "hexagons.csv", "washers.csv", "sheet_gauges.csv"}) {
        const auto rows = readCsv(embedded(file));
        EXPECT_GT(rows.size(), 10u) << file;
        for (const CsvRow& row : rows)
            EXPECT_FALSE(row.text("source").empty()) << file;
    }
    EXPECT_THROW(embedded("nothing.csv"), Bug);
}

} // namespace
