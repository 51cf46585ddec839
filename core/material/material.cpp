#include "core/material/material.h"

#include "core/material/names.h"
#include "core/units/plain_text.h"
#include "core/util/csv.h"
#include "core/util/embedded.h"
#include "core/util/require.h"
#include "core/util/say.h"

#include <algorithm>
#include <cmath>

namespace pw::material {

namespace {

using util::Problem;

struct Row {
    std::string name; ///< as the table has it, in every language
    Material material;
    std::vector<std::string> keys;
    double overMm, toMm;
};

std::string keyOf(std::string_view name) {
    const std::string brief = key(name, {"astm", "aisi", "sae", "en", "din", "grade", "gr", "steel"});
    return brief.empty() ? key(name, {}) : brief; // "steel" alone is a name too
}

Metal metalOf(const std::string& word) {
    static constexpr std::pair<std::string_view, Metal> kWords[] = {
        {"steel", Metal::Steel},         {"stainless", Metal::Stainless},
        {"grey iron", Metal::GreyIron},  {"ductile iron", Metal::DuctileIron},
        {"aluminium", Metal::Aluminium}, {"copper alloy", Metal::CopperAlloy}};
    const auto found = std::ranges::find(kWords, word, &std::pair<std::string_view, Metal>::first);
    util::require(found != std::end(kWords), "materials.csv: no metal \"" + word + "\"");
    return found->second;
}

const std::vector<Row>& table() {
    static const std::vector<Row> kRows = [] {
        std::vector<Row> rows;
        for (const util::CsvRow& csv : util::readCsv(util::embedded("materials.csv"))) {
            Row row;
            Material& m = row.material;
            row.name = csv.text("name");
            m.name = say(row.name.c_str());
            m.yield = Stress::fromMpa(csv.number("yield"));
            m.ultimate = Stress::fromMpa(csv.number("ultimate"));
            m.E = Stress::fromMpa(csv.number("e"));
            m.nu = csv.number("nu");
            m.density = csv.number("density");
            m.metal = metalOf(csv.text("metal"));
            m.expansion = csv.number("expansion") * 1e-6;
            m.brittle = csv.text("kind") == "brittle";
            m.unknown = csv.text("kind") == "unknown";
            m.source = say(csv.text("source").c_str());
            row.overMm = csv.number("over_mm");
            row.toMm = csv.number("to_mm");
            row.keys.push_back(keyOf(row.name));
            for (const std::string& alias : util::splitList(csv.text("aliases")))
                row.keys.push_back(keyOf(alias));
            rows.push_back(std::move(row));
        }
        return rows;
    }();
    return kRows;
}

Problem noSuch(std::string_view name) {
    std::vector<std::string> near = nearNames(name, names());
    const bool none = near.empty();
    if (none)
        near = {"S235", "S355", "A36", "1018", "1045", "cast iron"};
    return {"", say("No material of that name: %1. %2; or take \"unknown scrap\", or give its yield and "
                    "ultimate stress.",
                    {units::quoted(name),
                     none ? say("Known are %1", {listed(near)}) : say("Near ones are %1", {listed(near)})})};
}

Problem wrong(const char* field, const std::string& message) {
    return {field, message};
}

/// A figure the user gave: positive and not beyond anything made of metal.
std::optional<Problem> check(const char* field, double value, double least, double most,
                             const char* example) {
    if (std::isfinite(value) && value >= least && value <= most)
        return std::nullopt;
    return wrong(field, say("This cannot be right for a material. Type it like %1.", {say(example)}));
}

std::optional<Problem> checkFigures(const job::Material& given) {
    std::optional<Problem> problem;
    const auto look = [&](const char* field, const std::optional<Stress>& value, double least, double most,
                          const char* example) {
        if (!problem && value)
            problem = check(field, value->mpa(), least, most, example);
    };
    look("yield", given.yield, 1, 5000, PW_SAY("250 MPa or 36 ksi"));
    look("ultimate", given.ultimate, 1, 6000, PW_SAY("400 MPa or 58 ksi"));
    look("E", given.E, 1000, 700000, "205 GPa");
    if (!problem && given.nu)
        problem = check("nu", *given.nu, 0, 0.499, "0.3");
    if (!problem && given.density)
        problem = check("density", *given.density, 500, 25000, "7850");
    if (!problem && given.expansion)
        problem =
            check("expansion", *given.expansion, 1e-6, 1e-4, PW_SAY("12e-6 (steel's, for each kelvin)"));
    return problem;
}

} // namespace

util::Result<Material> find(std::string_view name, Length thickness) {
    const std::string wanted = keyOf(name);
    const Row* best = nullptr;
    for (const Row& row : table()) {
        if (wanted.empty() || std::find(row.keys.begin(), row.keys.end(), wanted) == row.keys.end())
            continue;
        // Rows of one grade stand in order of thickness: the last one begun is the one that holds.
        if (!best || thickness.mm() > row.overMm)
            best = &row;
    }
    if (!best)
        return noSuch(name);
    return best->material;
}

util::Result<Material> resolve(const job::Material& given, Length thickness) {
    if (const auto problem = checkFigures(given))
        return *problem;
    Material material;
    auto known = find(given.name, thickness);
    if (known) {
        material = *known;
    } else if (given.yield) {
        // Nothing but the strength sets one steel apart from another. EN 1993-1-1, 3.2.6; density of steel.
        material.name = given.name.empty() ? say("own figures") : given.name;
        material.E = Stress::fromMpa(210000);
        material.expansionAssumed = !given.expansion;
        material.source = say("stated by the user");
    } else if (given.name.empty()) {
        return Problem{"", say("No material given. Name a grade such as S235 or A36, or \"unknown scrap\".")};
    } else {
        return known.problem();
    }
    if (given.yield || given.ultimate) {
        if (given.yield) {
            material.yield = *given.yield;
            material.unknown = false;
        }
        if (given.ultimate)
            material.ultimate = *given.ultimate;
        else if (!known || material.ultimate < material.yield)
            material.ultimate = material.yield;
        if (material.ultimate < material.yield)
            return wrong(given.yield ? "ultimate" : "yield",
                         say("The ultimate stress is less than the yield. Give both from the same sheet."));
        material.usersOwn = true;
        material.source =
            known ? say("stated by the user over %1", {known->source}) : say("stated by the user");
    }
    if (given.E)
        material.E = *given.E;
    if (given.nu)
        material.nu = *given.nu;
    if (given.density)
        material.density = *given.density;
    if (given.expansion)
        material.expansion = *given.expansion;
    return material;
}

std::vector<std::string> names() {
    std::vector<std::string> result;
    for (const Row& row : table())
        if (result.empty() || result.back() != row.name)
            result.push_back(row.name);
    return result;
}

} // namespace pw::material
