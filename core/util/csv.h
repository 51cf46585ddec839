#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// Our own tables (resources/*.csv): comma-separated, double quotes around cells that hold commas, the first
/// line names the columns, a line that starts with # is a remark. The tables are built in, so a bad one is a
/// bug.
namespace pw::util {

class CsvRow {
public:
    explicit CsvRow(std::map<std::string, std::string, std::less<>> cells) : m_cells(std::move(cells)) {}

    /// The cell of a column that exists; may be empty.
    const std::string& text(std::string_view column) const;
    /// The cell as a number, decimal point whatever the locale.
    double number(std::string_view column) const;
    /// As above; nothing for an empty cell.
    std::optional<double> numberIfAny(std::string_view column) const;

private:
    std::map<std::string, std::string, std::less<>> m_cells;
};

std::vector<CsvRow> readCsv(std::string_view text);

/// "a; b; c" as its parts, without the blanks around them.
std::vector<std::string> splitList(std::string_view cell);

} // namespace pw::util
