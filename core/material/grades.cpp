#include "core/material/grades.h"

#include "core/material/names.h"
#include "core/units/plain_text.h"
#include "core/util/csv.h"
#include "core/util/embedded.h"
#include "core/util/say.h"

#include <algorithm>

namespace pw::material {

namespace {

using util::CsvRow;

/// Sizes stand to a tenth of a millimetre in the tables.
constexpr double kSizeStep = 0.01;

std::string gradeKeyOf(std::string_view name) {
    return key(name,
               {"class", "grade", "gr", "gr.", "iso", "sae", "astm", "property", "bolt", "nut", "steel"});
}

/// Whose numbers these are, when the name says so: "SAE 8" is never an ISO class.
enum class Maker { NotSaid, Sae, Iso };

Maker makerOf(std::string_view name) {
    const std::string plain = key(name, {});
    return plain.starts_with("sae") ? Maker::Sae : plain.starts_with("iso") ? Maker::Iso : Maker::NotSaid;
}

bool isFrom(const CsvRow& row, Maker maker) {
    const bool sae = row.text("name").starts_with("SAE ");
    return maker == Maker::NotSaid || sae == (maker == Maker::Sae);
}

bool matches(const CsvRow& row, std::string_view typed) {
    if (!isFrom(row, makerOf(typed)))
        return false;
    const std::string wanted = gradeKeyOf(typed);
    if (wanted.empty())
        return false;
    if (gradeKeyOf(row.text("name")) == wanted)
        return true;
    const auto aliases = util::splitList(row.text("aliases"));
    return std::any_of(aliases.begin(), aliases.end(),
                       [&](const std::string& a) { return gradeKeyOf(a) == wanted; });
}

Stress stressIn(const CsvRow& row, double value) {
    return row.text("unit") == "ksi" ? Stress::fromKsi(value) : Stress::fromMpa(value);
}

/// Of the rows of one grade, in order of size, the one for this diameter; the last one beyond the table.
const CsvRow* rowForSize(const std::vector<const CsvRow*>& rows, double diameterMm) {
    const CsvRow* best = nullptr;
    for (const CsvRow* row : rows)
        if (!best || diameterMm > row->number("over_mm") + kSizeStep)
            best = row;
    return best;
}

bool isBeyond(const CsvRow& row, double diameterMm) {
    return diameterMm > row.number("to_mm") + kSizeStep;
}

const std::vector<CsvRow>& screwTable() {
    static const std::vector<CsvRow> kRows = util::readCsv(util::embedded("screw_grades.csv"));
    return kRows;
}

const std::vector<CsvRow>& nutTable() {
    static const std::vector<CsvRow> kRows = util::readCsv(util::embedded("nut_grades.csv"));
    return kRows;
}

std::vector<std::string> namesIn(const std::vector<CsvRow>& table) {
    std::vector<std::string> names;
    for (const CsvRow& row : table)
        if (std::find(names.begin(), names.end(), row.text("name")) == names.end())
            names.push_back(row.text("name"));
    return names;
}

util::Problem noSuch(const char* what, std::string_view typed, const std::vector<std::string>& names) {
    std::vector<std::string> near = nearNames(typed, names);
    return {"", near.empty() ? say(what, {units::quoted(typed), say("Known are %1", {listed(names)})})
                             : say(what, {units::quoted(typed), say("Near ones are %1", {listed(near)})})};
}

bool isMetric(const thread::Thread& thread) {
    return thread.form == thread::Form::Metric || thread.form == thread::Form::Trapezoidal;
}

/// SAE J995 gives less for fine threads: UNF, and 12 threads an inch and finer above 1 in.
bool isFine(const thread::Thread& thread) {
    return !isMetric(thread) && thread.series != "UNC" && thread.series != "BSW" && thread.series != "ACME" &&
           thread.pitch.inch() < 1.0 / 8.01;
}

} // namespace

util::Result<ScrewGrade> findScrewGrade(std::string_view name, const thread::Thread& thread) {
    std::vector<const CsvRow*> rows;
    for (const CsvRow& row : screwTable())
        if (matches(row, name))
            rows.push_back(&row);
    const double diameter = thread.diameter.mm();
    const CsvRow* const row = rowForSize(rows, diameter);
    if (!row)
        return noSuch(PW_SAY("No screw grade of that name: %1. %2; or take \"unknown\"."), name,
                      screwGradeNames());
    ScrewGrade grade;
    grade.name = say(row->text("name").c_str());
    grade.yield = stressIn(*row, row->number("yield"));
    grade.ultimate = stressIn(*row, row->number("ultimate"));
    const auto proof = row->numberIfAny("proof");
    grade.proof = proof ? stressIn(*row, *proof) : grade.yield * 0.9;
    grade.source = say(row->text("source").c_str());
    grade.beyondTable = isBeyond(*row, diameter);
    return grade;
}

util::Result<NutGrade> findNutGrade(std::string_view name, const thread::Thread& thread) {
    const std::string_view family = isMetric(thread) ? "metric" : "inch";
    const std::string_view pitch = isFine(thread) ? "fine" : "coarse";
    std::vector<const CsvRow*> rows;
    for (const CsvRow& row : nutTable()) {
        const bool ours =
            row.text("family") == "any" || row.text("family") == family || makerOf(name) != Maker::NotSaid;
        if (ours && (row.text("pitch") == "any" || row.text("pitch") == pitch) && matches(row, name))
            rows.push_back(&row);
    }
    const double diameter = thread.diameter.mm();
    const CsvRow* const row = rowForSize(rows, diameter);
    if (!row)
        return noSuch(PW_SAY("No nut grade of that name: %1. %2; or take \"unknown\"."), name,
                      nutGradeNames());
    return NutGrade{row->text("name"), stressIn(*row, row->number("proof")), say(row->text("source").c_str()),
                    isBeyond(*row, diameter)};
}

std::vector<std::string> screwGradeNames() {
    return namesIn(screwTable());
}

std::vector<std::string> nutGradeNames() {
    return namesIn(nutTable());
}

} // namespace pw::material
