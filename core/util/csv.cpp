#include "core/util/csv.h"

#include "core/util/require.h"

#include <charconv>

namespace pw::util {

namespace {

std::vector<std::string> splitLine(std::string_view line) {
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
    require(!quoted, "table: a quote is left open in: " + std::string(line));
    return cells;
}

} // namespace

const std::string& CsvRow::text(std::string_view column) const {
    const auto cell = m_cells.find(column);
    require(cell != m_cells.end(), "table: no column " + std::string(column));
    return cell->second;
}

double CsvRow::number(std::string_view column) const {
    const std::optional<double> value = numberIfAny(column);
    require(value.has_value(), "table: nothing in column " + std::string(column));
    return *value;
}

std::optional<double> CsvRow::numberIfAny(std::string_view column) const {
    const std::string& cell = text(column);
    if (cell.empty())
        return std::nullopt;
    double value = 0;
    const char* const end = cell.data() + cell.size();
    const auto [stop, error] = std::from_chars(cell.data(), end, value);
    require(error == std::errc() && stop == end,
            "table: not a number in " + std::string(column) + ": " + cell);
    return value;
}

std::vector<CsvRow> readCsv(std::string_view text) {
    std::vector<CsvRow> rows;
    std::vector<std::string> names;
    while (!text.empty()) {
        const std::size_t end = text.find('\n');
        const std::string_view line = text.substr(0, end);
        text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
        if (line.empty() || line == "\r" || line.front() == '#')
            continue;
        std::vector<std::string> cells = splitLine(line);
        if (names.empty()) {
            names = std::move(cells);
            continue;
        }
        require(cells.size() == names.size(), "table: wrong number of cells in: " + std::string(line));
        std::map<std::string, std::string, std::less<>> row;
        for (std::size_t i = 0; i < names.size(); ++i)
            row.emplace(names[i], std::move(cells[i]));
        rows.emplace_back(std::move(row));
    }
    return rows;
}

std::vector<std::string> splitList(std::string_view cell) {
    std::vector<std::string> parts;
    while (!cell.empty()) {
        const std::size_t end = cell.find(';');
        std::string_view part = cell.substr(0, end);
        cell.remove_prefix(end == std::string_view::npos ? cell.size() : end + 1);
        while (!part.empty() && part.front() == ' ')
            part.remove_prefix(1);
        while (!part.empty() && part.back() == ' ')
            part.remove_suffix(1);
        if (!part.empty())
            parts.emplace_back(part);
    }
    return parts;
}

} // namespace pw::util
