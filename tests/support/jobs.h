#pragma once

#include "core/jobfile/json.h"
#include "core/jobfile/read.h"
#include "core/verdict/check.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>
#include <string>
#include <vector>

/// Jobs for tests, written as in their files.
namespace pw::testing {

inline jobfile::Tree treeOf(const std::string& json) {
    auto tree = jobfile::fromJson(json);
    if (!tree)
        throw std::runtime_error(tree.problem().message);
    return *tree;
}

inline job::Job jobOf(const jobfile::Tree& tree) {
    const jobfile::Reading reading = jobfile::readJob(tree);
    if (!reading.problems.empty())
        throw std::runtime_error(util::toText(reading.problems));
    return reading.job;
}

inline job::Job jobFrom(const std::string& json) {
    return jobOf(treeOf(json));
}

inline jobfile::Tree sampleTree(const std::string& name) {
    auto tree = jobfile::loadTree(std::string(PW_SAMPLES) + "/" + name + ".plate.json");
    if (!tree)
        throw std::runtime_error(util::toText(tree.problem()));
    return *tree;
}

inline job::Job sampleJob(const std::string& name) {
    return jobOf(sampleTree(name));
}

/// The six-pin disc, larger, with so many small holes in no order at all: from some thirty on it is long
/// work.
inline jobfile::Tree sixPinWithHoles(int count, const std::string& across = "300 mm") {
    jobfile::Tree tree = sampleTree("mill_lane_six_pin");
    tree.set("plate.outline.diameter", across);
    for (int i = 0; i < count; ++i) {
        const std::string hole = "plate.holes[" + std::to_string(i) + "]";
        const double angle = 2.4 * i, radius = 84 + 58.0 * i / std::max(count, 20); // a spiral
        tree.set(hole + ".at", jobfile::Tree::List{radius * std::cos(angle), radius * std::sin(angle)});
        tree.set(hole + ".diameter", 4);
    }
    return tree;
}

/// Null when there is none of that id.
inline const verdict::Check* findCheck(const std::vector<verdict::Check>& checks, const std::string& id) {
    for (const verdict::Check& check : checks)
        if (check.id == id)
            return &check;
    return nullptr;
}

/// The field put to a value as a change offers it: a list is JSON, all else is text as a person types it.
inline void putTyped(jobfile::Tree& tree, const std::string& field, const std::string& value) {
    if (!value.empty() && value.front() == '[')
        tree.set(field, treeOf(value));
    else if (value == "true" || value == "false")
        tree.set(field, value == "true");
    else if (!value.empty() && value.find_first_not_of("0123456789") == std::string::npos &&
             field.ends_with("count"))
        tree.set(field, std::stoi(value));
    else
        tree.set(field, value);
}

} // namespace pw::testing
