#include "core/loadpath/process.h"

namespace pw::loadpath {

using job::Process;
using units::Length;

ProcessFigures processFigures(const job::Cutting& cutting) {
    struct Row {
        double kerf, error, growth;
    };
    const Process process = cutting.process.value_or(Process::SawAndDrill);
    Row row{};
    switch (process) {
    case Process::PlasmaTable:
        row = {1.5, 0.5, 0.3};
        break;
    case Process::TorchTable:
        row = {2.0, 1.0, 0.5};
        break;
    case Process::HandTorch:
        row = {3.0, 2.0, 1.5};
        break;
    case Process::SawAndDrill:
        row = {0, 0.5, 0.1};
        break;
    case Process::Milled:
        row = {0, 0.05, 0.02};
        break;
    }
    ProcessFigures figures;
    figures.process = process;
    figures.kerf = cutting.kerf.value_or(Length::fromMm(row.kerf));
    figures.layoutError = cutting.layoutError.value_or(Length::fromMm(row.error));
    figures.growth = cutting.growth.value_or(Length::fromMm(row.growth));
    figures.assumed = !cutting.process;
    return figures;
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
        break;
    }
    return std::nullopt;
}

std::string_view wordOf(Process process) {
    switch (process) {
    case Process::PlasmaTable:
        return "plasma table";
    case Process::TorchTable:
        return "torch table";
    case Process::HandTorch:
        return "hand torch";
    case Process::SawAndDrill:
        return "saw and drill";
    case Process::Milled:
        break;
    }
    return "milled";
}

} // namespace pw::loadpath
