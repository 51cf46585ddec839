#include "core/thread/series.h"
#include "core/thread/thread.h"

#include <cmath>
#include <gtest/gtest.h>
#include <random>

using namespace pw::thread;

namespace {

struct Case {
    const char* text;
    const char* name;
    double diameterMm, pitchMm;
};

TEST(ThreadParse, ReadsThreadsAsTheyAreCalled) {
    // Pitches: ASME B1.1, ISO 261, BS 84, ASME B1.5, ISO 2903 by their designation.
    const Case cases[] = {
        {"5/8-18 UNF", "5/8-18 UNF", 15.875, 25.4 / 18},
        {"5/8-11", "5/8-11 UNC", 15.875, 25.4 / 11},
        {"5/8\"-11", "5/8-11 UNC", 15.875, 25.4 / 11},
        {"5/8 in - 11 NC", "5/8-11 UNC", 15.875, 25.4 / 11},
        {"5/8 UNC", "5/8-11 UNC", 15.875, 25.4 / 11},
        {"5/8 unf", "5/8-18 UNF", 15.875, 25.4 / 18},
        {"5/8-11 UNC-2A", "5/8-11 UNC", 15.875, 25.4 / 11},
        {"5/8-11 LH", "5/8-11 UNC LH", 15.875, 25.4 / 11},
        {"\u215d-11", "5/8-11 UNC", 15.875, 25.4 / 11},
        {"1-1/4-7", "1-1/4-7 UNC", 31.75, 25.4 / 7},
        {"1 1/4-7 UNC", "1-1/4-7 UNC", 31.75, 25.4 / 7},
        {"1-1/4 UNC", "1-1/4-7 UNC", 31.75, 25.4 / 7},
        {"1.25-7", "1-1/4-7 UNC", 31.75, 25.4 / 7},
        {"1-8", "1-8 UNC", 25.4, 25.4 / 8},
        {"1-14", "1-14 UNS", 25.4, 25.4 / 14},
        {"1-1/4-8", "1-1/4-8 UN", 31.75, 25.4 / 8},
        {"3/4-20", "3/4-20 UNEF", 19.05, 25.4 / 20},
        {"2-4.5", "2-4.5 UNC", 50.8, 25.4 / 4.5},
        {"2-4-1/2 UNC", "2-4.5 UNC", 50.8, 25.4 / 4.5},
        {"10-24", "#10-24 UNC", 0.190 * 25.4, 25.4 / 24},
        {"#8-32", "#8-32 UNC", 0.164 * 25.4, 25.4 / 32},
        {"M20", "M20", 20, 2.5},
        {"m20", "M20", 20, 2.5},
        {"M20x2.5", "M20", 20, 2.5},
        {"M20x1.5", "M20x1.5", 20, 1.5},
        {"M20 X 1.5", "M20x1.5", 20, 1.5},
        {"M20\u00d71.5", "M20x1.5", 20, 1.5},
        {"M20-1.5", "M20x1.5", 20, 1.5},
        {"M20-6g", "M20", 20, 2.5},
        {"M20x1.5-6H", "M20x1.5", 20, 1.5},
        {"M24", "M24", 24, 3},
        {"1-5 ACME", "1-5 ACME", 25.4, 25.4 / 5},
        {"1-1/2-4 Acme", "1-1/2-4 ACME", 38.1, 25.4 / 4},
        {"1-5 ACME-2G", "1-5 ACME", 25.4, 25.4 / 5},
        {"1 ACME", "1-5 ACME", 25.4, 25.4 / 5},
        {"Tr 24x5", "Tr 24x5", 24, 5},
        {"TR24X5", "Tr 24x5", 24, 5},
        {"Tr 24", "Tr 24x5", 24, 5},
        {"5/8 BSW", "5/8 BSW", 15.875, 25.4 / 11},
        {"5/8-11 BSW", "5/8 BSW", 15.875, 25.4 / 11},
        {"1/2 Whitworth", "1/2 BSW", 12.7, 25.4 / 12},
        {"5/8 BSF", "5/8 BSF", 15.875, 25.4 / 14},
    };
    for (const Case& c : cases) {
        const auto thread = parse(c.text);
        ASSERT_TRUE(thread.ok()) << c.text << ": " << thread.problem().message;
        EXPECT_EQ(thread->name, c.name) << c.text;
        EXPECT_NEAR(thread->diameter.mm(), c.diameterMm, 1e-9) << c.text;
        EXPECT_NEAR(thread->pitch.mm(), c.pitchMm, 1e-9) << c.text;
    }
}

TEST(ThreadParse, TheNameReadsBackAsTheSameThread) {
    for (const StandardSize& size : standardSizes()) {
        const std::string text = size.series == "M" || size.series == "Tr" ? size.series + size.size
                                                                           : size.size + " " + size.series;
        const auto thread = parse(text);
        ASSERT_TRUE(thread.ok()) << text << ": " << thread.problem().message;
        EXPECT_NEAR(thread->pitch.mm(), size.pitch.mm(), 1e-9) << text;
        const auto again = parse(thread->name);
        ASSERT_TRUE(again.ok()) << thread->name << ": " << again.problem().message;
        EXPECT_EQ(*again, *thread) << text;
    }
}

TEST(ThreadParse, AMultiStartTrapezoidalHasLeadAndPitch) {
    const auto thread = parse("Tr 40x14(P7)");
    ASSERT_TRUE(thread.ok());
    EXPECT_EQ(thread->name, "Tr 40x14 P7");
    EXPECT_EQ(thread->starts, 2);
    EXPECT_DOUBLE_EQ(thread->pitch.mm(), 7);
    EXPECT_DOUBLE_EQ(thread->lead().mm(), 14);
    EXPECT_EQ(parse("Tr 40x14 P7 LH")->name, "Tr 40x14 P7 LH");
}

TEST(ThreadParse, RefusesWhatIsNoThreadAndGivesAnExample) {
    const char* texts[] = {
        "",           " ",      "5/8",     "M",          "M20x",       "M20x0",          "M20x15",
        "M20 fine",   "M21.7",  "M-20",    "5/8-11 UNF", "5/8-18 BSW", "5/8-0",          "5/8-1",
        "5/0-11",     "0-80",   "1/2 NPT", "1/2 BSP",    "G 1/2",      "20 mm",          "Tr",
        "Tr 24x5 P3", "Tr 24x", "999-8",   "M9999",      "5/8-11 XYZ", "5/8-11 UNC UNF", "UNC",
        "nan-11",     "M1e2",   "5/8--11", "\x01",       "\xff\xff",   "M20;",           "#99-24",
        "5/8/2-11",   "M0x1"};
    for (const char* text : texts) {
        const auto thread = parse(text);
        ASSERT_FALSE(thread.ok()) << text << " was read as " << thread->name;
        EXPECT_NE(thread.problem().message.find(example()), std::string::npos) << thread.problem().message;
    }
    EXPECT_FALSE(parse(std::string(1000, '5')).ok());
}

TEST(ThreadParse, TheMessageSaysWhatTheSeriesHasInstead) {
    EXPECT_EQ(parse("5/8-11 UNF").problem().message, "Not a thread: \"5/8-11 UNF\" (5/8 UNF has 18 threads "
                                                     "per inch; leave the series out if yours is another). "
                                                     "Type it like 5/8-11 UNC or M20.");
}

TEST(ThreadParse, RandomTextNeverCrashesAndWhatIsReadHasAShape) {
    constexpr unsigned kSeed = 5811;
    SCOPED_TRACE("seed " + std::to_string(kSeed));
    std::mt19937 random(kSeed);
    const std::string pieces[] = {"M",   "20",   "x",  "1.5", "5/8", "-", "18",   " ",
                                  "UNF", "UNC",  "Tr", "24",  "BSW", "1", "/4",   "#",
                                  "10",  "ACME", "LH", "(",   "P7",  ")", "\xff", "."};
    int read = 0;
    for (int round = 0; round < 100000; ++round) {
        std::string text;
        for (int i = static_cast<int>(random() % 7); i >= 0; --i)
            text += pieces[random() % std::size(pieces)];
        const auto thread = parse(text);
        if (!thread.ok())
            continue;
        ++read;
        ASSERT_GT(rootDiameter(*thread).mm(), 0) << text;
        ASSERT_GT(thread->pitch.mm(), 0) << text;
        ASSERT_GT(screwShearArea(*thread, Length::fromMm(1)).mm2(), 0) << text;
        ASSERT_GT(nutShearArea(*thread, Length::fromMm(1)).mm2(), 0) << text;
    }
    EXPECT_GT(read, 100);
}

/// Found by fuzzing: the name of an odd size was rounded, and stood for another thread or for none.
TEST(ThreadParse, TheNameOfAnOddSizeMeansThatThread) {
    for (const char* text : {"5/6-11", "1-2 6/7", "0.123456789-56", "M20x1.3333333", "Tr 62.22216x7.77777 P7.77777",
                             "M12.3456789x1.5", "Tr 40x13.3333 P3.333333"}) {
        const auto thread = parse(text);
        if (!thread)
            continue; // refused is fine, another thread is not
        const auto again = parse(thread->name);
        ASSERT_TRUE(again) << text << " is called " << thread->name;
        EXPECT_EQ(*again, *thread) << text << " is called " << thread->name;
    }
    EXPECT_TRUE(parse("5/6-11"));
}

TEST(ThreadParse, AFractionHasWholeNumbers) {
    EXPECT_FALSE(parse("1-2/.7"));
    EXPECT_FALSE(parse("1.5/2-11"));
    EXPECT_TRUE(parse("1-4 1/2"));
}

} // namespace
