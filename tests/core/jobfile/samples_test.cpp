#include "core/jobfile/json.h"
#include "core/jobfile/read.h"
#include "core/util/write_file.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>

namespace pw::jobfile {
namespace {

namespace fs = std::filesystem;

std::vector<fs::path> samples() {
    std::vector<fs::path> files;
    for (const auto& entry : fs::directory_iterator(PW_SAMPLES))
        if (entry.path().string().ends_with(".plate.json"))
            files.push_back(entry.path());
    std::ranges::sort(files);
    return files;
}

class Samples : public ::testing::TestWithParam<fs::path> {};

TEST_P(Samples, ReadWithoutAProblemOrAnUnknownKey) {
    const auto tree = loadTree(GetParam());
    ASSERT_TRUE(tree) << util::toText(tree.problem());
    const Reading reading = readJob(*tree);
    EXPECT_EQ(util::toText(reading.problems), "");
    EXPECT_EQ(reading.unknownKeys, std::vector<std::string>());
    EXPECT_TRUE(reading.job.work && reading.job.plate.outline && reading.job.plate.thickness);
    // A pull may leave its load to wrench, ram or hub, or have the tool rated.
    EXPECT_TRUE(reading.job.load.total || !reading.job.springs.empty() ||
                reading.job.work == job::Work::Pull);
}

TEST_P(Samples, AreSavedToTheLetterAsTheyAre) {
    const auto text = util::readFile(GetParam());
    ASSERT_TRUE(text);
    EXPECT_EQ(toJson(*fromJson(*text)), *text);
}

INSTANTIATE_TEST_SUITE_P(Every, Samples, ::testing::ValuesIn(samples()), [](const auto& sample) {
    std::string name = sample.param.filename().string();
    std::ranges::replace_if(
        name, [](char c) { return !std::isalnum(static_cast<unsigned char>(c)); }, '_');
    return name;
});

TEST(Samples, CoverBothUnitsBothKindsOfWorkAndEveryOutline) {
    std::vector<job::OutlineShape> shapes;
    int inch = 0, pull = 0;
    for (const fs::path& file : samples()) {
        const job::Job job = readJob(*loadTree(file)).job;
        shapes.push_back(job.plate.outline->shape);
        inch += job.preferred == units::System::Inch;
        pull += job.work == job::Work::Pull;
    }
    EXPECT_GE(shapes.size(), 8u);
    EXPECT_GE(inch, 2);
    EXPECT_GE(pull, 2);
    for (const auto shape : {job::OutlineShape::Disc, job::OutlineShape::Bar, job::OutlineShape::Rectangle,
                             job::OutlineShape::Polygon})
        EXPECT_NE(std::ranges::find(shapes, shape), shapes.end());
}

} // namespace
} // namespace pw::jobfile
