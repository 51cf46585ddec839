#include "core/job/process.h"

#include "core/util/require.h"
#include "core/util/say.h"

namespace pw::job {

ProcessHabits habitsOf(Process process) {
    const auto habits = [](double kerf, double layoutError, double growth) {
        return ProcessHabits{Length::fromMm(kerf), Length::fromMm(layoutError), Length::fromMm(growth)};
    };
    switch (process) {
    case Process::PlasmaTable:
        return habits(1.5, 0.5, 0.3);
    case Process::TorchTable:
        return habits(1.8, 0.8, 0.5);
    case Process::HandTorch:
        return habits(2.5, 1.5, 1.5);
    case Process::SawAndDrill:
        return habits(1.5, 0.5, 0.1);
    case Process::Milled:
        return habits(0, 0.05, 0.02);
    }
    throw util::Bug("a process without habits");
}

std::string_view nameOf(Process process) {
    switch (process) {
    case Process::PlasmaTable:
        return PW_SAY("plasma table");
    case Process::TorchTable:
        return PW_SAY("torch table");
    case Process::HandTorch:
        return PW_SAY("hand torch");
    case Process::SawAndDrill:
        return PW_SAY("saw and drill");
    case Process::Milled:
        return PW_SAY("milled");
    }
    throw util::Bug("a process without a name");
}

std::optional<Length> leastBurnedHole(Process process, Length thickness) {
    switch (process) {
    case Process::PlasmaTable:
        return thickness;
    case Process::TorchTable:
        return thickness * 1.5;
    case Process::HandTorch:
        return thickness * 2.0;
    case Process::SawAndDrill:
    case Process::Milled:
        return std::nullopt;
    }
    throw util::Bug("a process that neither burns nor drills");
}

std::vector<int> holesForTheDrill(const Plate& plate) {
    std::vector<int> drilled;
    for (std::size_t i = 0; i < plate.holes.size(); ++i)
        if (plate.holes[i].drilled)
            drilled.push_back(static_cast<int>(i));
    return drilled;
}

} // namespace pw::job
