#pragma once

#include "app/engine/flange.h"
#include "core/job/job.h"
#include "core/verdict/check.h"

#include <string>
#include <vector>

namespace pw::engine {

struct FlangeCheckOptions {
    double strengthFactor = 1;  ///< on yield (ultimate of a brittle flange) at the part's temperature
    double stiffnessFactor = 1; ///< on E at the part's temperature
    FlangeOptions field;
};

/// `flange.bending`, `jaws.bearing` and `flange.shear` of a job whose jaws pull on a flange; nothing when it
/// has neither, nor when bolts pull and no jaws are given. `design` is the whole pull, hammering's factor in
/// it where that is meant; s = wanted margin / 2. What had to be taken goes to `assumptions` as sentences;
/// what is missing or cannot be makes the check incomplete and says why. `fieldOut` takes the elastic answer.
std::vector<verdict::Check> flangeChecks(const job::Job& job, units::Force design, double s,
                                         std::vector<std::string>& assumptions,
                                         const FlangeCheckOptions& options = {},
                                         std::optional<FlangeField>* fieldOut = nullptr);

} // namespace pw::engine
