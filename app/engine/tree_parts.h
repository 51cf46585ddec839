#pragma once

#include "app/engine/report.h"
#include "core/jobfile/tree.h"

#include <cmath>
#include <string>
#include <vector>

/// What every JSON answer is made of. A figure that was not computed is null, never 0.
namespace pw::engine {

inline jobfile::Tree number(double value) {
    return std::isfinite(value) ? jobfile::Tree(value) : jobfile::Tree();
}
inline jobfile::Tree number(const Found<double>& value) {
    return value ? number(*value) : jobfile::Tree();
}

inline jobfile::Tree texts(const std::vector<std::string>& lines) {
    jobfile::Tree list = jobfile::Tree::list();
    for (const std::string& line : lines)
        list.push(line);
    return list;
}

} // namespace pw::engine
