#pragma once

#include "core/thread/thread.h"
#include "core/units/quantity.h"
#include "core/util/result.h"

#include <string>
#include <string_view>
#include <vector>

/// Strength grades of screws and nuts (resources/screw_grades.csv, nut_grades.csv).
namespace pw::material {

using units::Stress;

/// Stresses on the tensile stress area.
struct ScrewGrade {
    std::string name;
    Stress proof, yield, ultimate;
    std::string source;
    bool beyondTable = false; ///< the thread is larger than the standard goes; its last row was taken

    bool operator==(const ScrewGrade&) const = default;
};

/// "8.8", "class 8.8", "SAE 5", "grade 5", "B7", "A307", "hardware-store rod", "unknown". An unknown name is
/// a problem that lists near ones; it names no field.
util::Result<ScrewGrade> findScrewGrade(std::string_view name, const thread::Thread& thread);

/// A nut of full height carries proof x the screw's tensile stress area; a nut of another height in
/// proportion.
struct NutGrade {
    std::string name;
    Stress proof;
    std::string source;
    bool beyondTable = false;

    bool operator==(const NutGrade&) const = default;
};

/// "8", "class 8", "SAE 5", "A563 DH", "2H", "unknown". A bare number is an ISO class on a metric or
/// trapezoidal thread and an SAE grade on an inch one.
util::Result<NutGrade> findNutGrade(std::string_view name, const thread::Thread& thread);

std::vector<std::string> screwGradeNames();
std::vector<std::string> nutGradeNames();

} // namespace pw::material
