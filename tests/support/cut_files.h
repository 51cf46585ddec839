#pragma once

#include "geometry/exchange/cut_path.h"
#include "tests/support/run.h"

#include <gtest/gtest.h>
#include <memory>
#include <nlohmann/json.hpp>
#include <sstream>
#include <string>
#include <vector>

/// Outside readers for cut files, and the path as our own data has it.
namespace pw::testing {

/// One report of a script of tests/support for each text; `option` goes before the files. Every file must be
/// sound.
inline std::vector<nlohmann::json> readBy(const std::string& script, const std::string& ending,
                                          const std::vector<std::string>& texts,
                                          const std::string& option = "") {
    std::vector<std::unique_ptr<FileForTest>> files;
    std::string command = "/usr/bin/python3 -B '" PW_SUPPORT "/" + script + "' " + option;
    for (const std::string& text : texts) {
        files.push_back(std::make_unique<FileForTest>(ending, text));
        command += " '" + files.back()->path() + "'";
    }
    const Ran ran = run(command);
    EXPECT_EQ(ran.status, 0);
    std::vector<nlohmann::json> reports;
    std::istringstream lines(ran.output);
    for (std::string line; std::getline(lines, line);) {
        reports.push_back(nlohmann::json::parse(line));
        EXPECT_EQ(reports.back()["problems"], nlohmann::json::array());
    }
    EXPECT_EQ(reports.size(), texts.size());
    reports.resize(texts.size());
    return reports;
}

/// Lead-in, cut and lead-out in the direction of travel.
inline std::vector<shape::Side> movesOf(const exchange::Burn& burn) {
    std::vector<shape::Side> moves{burn.leadIn};
    for (std::size_t i = 0; i < burn.loop.size(); ++i)
        moves.push_back(burn.loop.side(i));
    if (burn.leadOut)
        moves.push_back(*burn.leadOut);
    return moves;
}

/// Places at equal steps along, as cut_read.py takes them.
inline std::vector<shape::Point> places(const std::vector<shape::Side>& moves, int steps) {
    double total = 0, gone = 0;
    for (const shape::Side& move : moves)
        total += move.length();
    std::vector<shape::Point> out;
    std::size_t k = 0;
    for (int step = 0; step <= steps; ++step) {
        const double wanted = total * step / steps;
        while (k + 1 < moves.size() && gone + moves[k].length() < wanted)
            gone += moves[k++].length();
        out.push_back(moves[k].pointAt((wanted - gone) / moves[k].length()));
    }
    return out;
}

/// The largest distance between the path in a report and the burns, place by place; `shift` is added to the
/// burns.
inline double apart(const nlohmann::json& report, const std::vector<exchange::Burn>& burns,
                    shape::Point shift) {
    EXPECT_EQ(report["paths"].size(), burns.size());
    if (report["paths"].size() != burns.size())
        return 1e9;
    double worst = 0;
    for (std::size_t i = 0; i < burns.size(); ++i) {
        const nlohmann::json& read = report["paths"][i]["places"];
        const std::vector<shape::Point> ours = places(movesOf(burns[i]), static_cast<int>(read.size()) - 1);
        for (std::size_t k = 0; k < ours.size(); ++k)
            worst = std::max(worst, shape::distance(ours[k] + shift, {read[k][0], read[k][1]}));
    }
    return worst;
}

} // namespace pw::testing
