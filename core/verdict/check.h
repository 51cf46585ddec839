#pragma once

#include "core/shape/loop.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace pw::verdict {

/// From good to bad; Incomplete stands apart.
enum class Grade { Holds, Thin, Sets, Breaks, Incomplete };

std::string_view wordOf(Grade grade); ///< "holds", "thin", "sets", "breaks", "incomplete"

/// A force check is about strength (it sets stop torque and rated load); a fit check is about room and
/// length.
enum class CheckKind { Force, Fit, Note };

/// One limit of one member of the load path.
struct Check {
    std::string id{};     ///< "plate.collapse"; the list is part of the file promise
    std::string member{}; ///< "plate", "screw", "nut", ...
    std::string title{};  ///< a few words for the row: "Plate, folding"
    CheckKind kind = CheckKind::Force;
    Grade grade = Grade::Incomplete;
    std::optional<double> demand{}, capacity{}; ///< in `unit`
    std::string unit{};                         ///< "N", "mm", "MPa", ...
    /// margin = capacity / demand for force checks; in `unit` for fit checks, and wanted with it, unless
    /// marginIsRatio.
    std::optional<double> margin{}, wanted{};
    bool marginIsRatio = false;        ///< of a fit check whose margin is capacity / demand all the same
    std::string basis{};               ///< one line, with the numbers put in
    std::string source{};              ///< standard, handbook, or "common practice, no published source"
    std::vector<shape::Point> where{}; ///< places on the plan, mm
    bool operator==(const Check&) const = default;

    /// Margin over wanted: 1 is just enough. None when either is missing.
    std::optional<double> marginOverWanted() const;
};

/// A check's member as it stands in a sentence, in the reader's language.
std::string sayMember(const std::string& member);

/// The worst grade. Members that are incomplete do not drag the others down; `plateGrade` incomplete does.
Grade worst(const std::vector<Check>& checks);

/// Index of the check with the least margin over wanted among force checks; a fit check takes its place only
/// when its grade is worse. -1 when there is none.
int weakestLink(const std::vector<Check>& checks);

} // namespace pw::verdict
