#pragma once

#include <fstream>
#include <map>
#include <stdexcept>
#include <string>
#include <vector>

/// Reads the reference tables: comma-separated, double quotes around cells that hold commas, first row the
/// names.
namespace pw::testing {

using Row = std::map<std::string, std::string>;

inline std::vector<std::string> splitCsvLine(const std::string& line) {
    std::vector<std::string> cells(1);
    bool quoted = false;
    for (std::size_t i = 0; i < line.size(); ++i) {
        const char c = line[i];
        if (c == '"' && quoted && i + 1 < line.size() && line[i + 1] == '"') {
            cells.back() += '"';
            ++i;
        } else if (c == '"') {
            quoted = !quoted;
        } else if (c == ',' && !quoted) {
            cells.emplace_back();
        } else if (c != '\r') {
            cells.back() += c;
        }
    }
    return cells;
}

inline std::vector<Row> readCsv(const std::string& file) {
    std::ifstream in(file);
    if (!in)
        throw std::runtime_error("cannot read " + file);
    std::string line;
    std::getline(in, line);
    const std::vector<std::string> names = splitCsvLine(line);
    std::vector<Row> rows;
    while (std::getline(in, line)) {
        if (line.empty())
            continue;
        const std::vector<std::string> cells = splitCsvLine(line);
        Row row;
        for (std::size_t i = 0; i < names.size(); ++i)
            row[names[i]] = i < cells.size() ? cells[i] : "";
        rows.push_back(std::move(row));
    }
    return rows;
}

} // namespace pw::testing
