#pragma once

#include "core/job/job.h"
#include "core/units/quantity.h"
#include "core/util/result.h"

#include <string>
#include <string_view>
#include <vector>

/// What the named grades are worth (resources/materials.csv, each row with its standard).
namespace pw::material {

using units::Length;
using units::Stress;

/// Which tables a metal falls under: those for hot steel hold for plain and low-alloy steel alone.
enum class Metal { Steel, Stainless, GreyIron, DuctileIron, Aluminium, CopperAlloy };

struct Material {
    std::string name;
    Stress yield, ultimate; ///< minimum of the standard at the thickness asked for
    Stress E;
    double nu = 0.3;
    double density = 7850; ///< kg/m3
    Metal metal = Metal::Steel;
    double expansion = 12.0e-6;    ///< per K near room temperature
    bool expansionAssumed = false; ///< steel's was taken because none was to be had
    bool brittle = false;          ///< judged on its ultimate stress (grey iron)
    bool unknown = false;          ///< nobody knows what it is: ask for the shop tests
    std::string source;            ///< the standard, or "stated by the user"
    bool usersOwn = false;         ///< a strength is the user's figure

    bool operator==(const Material&) const = default;
};

/// A grade by name or alias; letter case, blanks, hyphens and "ASTM", "AISI", "EN" before the name do not
/// matter. A thickness of 0 takes the thinnest row, one beyond the table the last. An unknown name is a
/// problem that lists near ones; it names no field.
util::Result<Material> find(std::string_view name, Length thickness = {});

/// The job's material: the named grade with the user's figures over it. A name that is no grade is the user's
/// own when yield is given; what else is missing is then that of steel, and an ultimate stress not given is
/// the yield. The problem's field is "" or the key at fault ("yield", "ultimate", "E", "nu", "density",
/// "expansion").
util::Result<Material> resolve(const job::Material& given, Length thickness = {});

/// The names to choose from, in the order of the table.
std::vector<std::string> names();

} // namespace pw::material
