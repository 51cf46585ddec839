#pragma once

#include "app/engine/report.h"
#include "core/loadpath/pull_load.h"
#include "core/loadpath/setup.h"
#include "core/spring/pack.h"

#include <string>
#include <vector>

namespace pw::engine {

/// What the stations carry, and who decided it.
struct FoundLoads {
    spring::PackLoads pack;
    LoadReport load;
    HubReport hub;
    bool stated = true; ///< false: a pull whose load nobody states; it wants more in hand (BTH-1 category B)
    bool nobodys = false; ///< a pull with neither load, hub, wrench nor ram: to be rated, not judged
    std::vector<std::string> assumptions;
    util::Problems problems;
    std::vector<Missing> missing;
};

/// Springs or a stated total when squeezing; a stated total, else the larger of what the hub asks and what
/// wrench or ram can make, when pulling. `tried` is the load taken when nobody states one.
FoundLoads findLoads(const job::Job& job, const loadpath::Setup& setup, const Found<units::Force>& tried);

/// "springs", "given", "hub", "wrench", "ram", "rated"; empty when there is none.
std::string nameOf(spring::LoadSource source);

} // namespace pw::engine
