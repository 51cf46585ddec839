#include "core/units/unit_table.h"

#include <numbers>
#include <span>

namespace pw::units {

namespace {

enum class Case { Any, Exact };

struct Spelling {
    std::string_view text;
    double scale;
    Case letters = Case::Any;
    double offset = 0;
    bool isGauge = false;
};

constexpr double kLbf = kNewtonPerPoundForce;
constexpr double kKgf = kNewtonPerKilogramForce;
constexpr double kFoot = 12.0 * kMmPerInch;
constexpr double kInch2 = kMmPerInch * kMmPerInch;

constexpr Spelling kLengths[] = {
    {"mm", 1},
    {"millimetre", 1},
    {"millimetres", 1},
    {"millimeter", 1},
    {"millimeters", 1},
    {"cm", 10},
    {"m", 1000, Case::Exact},
    {"metre", 1000},
    {"meter", 1000},
    {"um", 0.001, Case::Exact},
    {"micron", 0.001},
    {"microns", 0.001},
    {"in", kMmPerInch},
    {"in.", kMmPerInch},
    {"inch", kMmPerInch},
    {"inches", kMmPerInch},
    {"\"", kMmPerInch},
    {"''", kMmPerInch},
    {"ft", kFoot},
    {"ft.", kFoot},
    {"foot", kFoot},
    {"feet", kFoot},
    {"'", kFoot},
    {"thou", kMmPerInch / 1000},
    {"mil", kMmPerInch / 1000},
    {"mils", kMmPerInch / 1000},
    {"ga", 0, Case::Any, 0, true},
    {"ga.", 0, Case::Any, 0, true},
    {"gauge", 0, Case::Any, 0, true},
    {"gage", 0, Case::Any, 0, true},
};

constexpr Spelling kAreas[] = {
    {"mm2", 1},
    {"mm^2", 1},
    {"sq mm", 1},
    {"sqmm", 1},
    {"cm2", 100},
    {"cm^2", 100},
    {"sq cm", 100},
    {"sqcm", 100},
    {"m2", 1e6},
    {"m^2", 1e6},
    {"in2", kInch2},
    {"in^2", kInch2},
    {"sq in", kInch2},
    {"sq in.", kInch2},
    {"sq. in", kInch2},
    {"sq. in.", kInch2},
    {"sqin", kInch2},
    {"sq inch", kInch2},
    {"sq inches", kInch2},
    {"square inch", kInch2},
    {"square inches", kInch2},
};

// The pound, kilogram and tonne of the trade are forces here: "lb" is lbf, "kg" is kgf.
constexpr Spelling kForces[] = {
    {"N", 1},
    {"newton", 1},
    {"newtons", 1},
    {"kN", 1000},
    {"daN", 10},
    {"lbf", kLbf},
    {"lb", kLbf},
    {"lbs", kLbf},
    {"lb.", kLbf},
    {"lbs.", kLbf},
    {"pound", kLbf},
    {"pounds", kLbf},
    {"kgf", kKgf},
    {"kg", kKgf},
    {"kp", kKgf},
    {"kip", 1000 * kLbf},
    {"kips", 1000 * kLbf},
};

// Apart, because a "ton" over an area or an inch is a long ton in old British tables: not guessed there.
constexpr Spelling kTons[] = {
    {"t", 1000 * kKgf},          {"tf", 1000 * kKgf},         {"tonne", 1000 * kKgf},
    {"tonnes", 1000 * kKgf},     {"metric ton", 1000 * kKgf}, {"metric tons", 1000 * kKgf},
    {"ton", 2000 * kLbf},        {"tons", 2000 * kLbf},       {"short ton", 2000 * kLbf},
    {"short tons", 2000 * kLbf}, {"US ton", 2000 * kLbf},     {"US tons", 2000 * kLbf},
    {"long ton", 2240 * kLbf},   {"long tons", 2240 * kLbf},
};

constexpr Spelling kStresses[] = {
    {"MPa", 1},   {"GPa", 1000},       {"kPa", 0.001},
    {"bar", 0.1}, {"psi", kMpaPerPsi}, {"ksi", 1000 * kMpaPerPsi},
    {"Pa", 1e-6},
};

constexpr double kDegree = std::numbers::pi / 180.0;
constexpr Spelling kAngles[] = {
    {"deg", kDegree}, {"deg.", kDegree}, {"degree", kDegree}, {"degrees", kDegree},
    {"rad", 1},       {"radian", 1},     {"radians", 1},
};

constexpr double kPerF = 1.0 / 1.8;
constexpr double kZeroF = -32.0 / 1.8;
constexpr Spelling kTemperatures[] = {
    {"C", 1},
    {"degC", 1},
    {"deg C", 1},
    {"celsius", 1},
    {"F", kPerF, Case::Any, kZeroF},
    {"degF", kPerF, Case::Any, kZeroF},
    {"deg F", kPerF, Case::Any, kZeroF},
    {"fahrenheit", kPerF, Case::Any, kZeroF},
};

constexpr std::string_view kPer[] = {"/", " / ", " per "};
constexpr std::string_view kTimes[] = {"-", ".", " ", "*", "", " . ", " - "};

char lower(char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

bool startsWith(std::string_view text, std::string_view head, Case letters = Case::Any) {
    if (text.size() < head.size())
        return false;
    for (std::size_t i = 0; i < head.size(); ++i)
        if (letters == Case::Exact ? text[i] != head[i] : lower(text[i]) != lower(head[i]))
            return false;
    return true;
}

/// A letter (or a byte of one beyond ASCII) after the spelling means that it was some other word.
bool endsAsWord(std::string_view rest) {
    if (rest.empty())
        return true;
    const char c = lower(rest.front());
    return !(c >= 'a' && c <= 'z') && static_cast<unsigned char>(c) < 0x80;
}

void keepLonger(std::optional<Unit>& best, const Unit& found) {
    if (!best || found.chars > best->chars)
        best = found;
}

void matchPlain(std::optional<Unit>& best, std::span<const Spelling> table, std::string_view text) {
    for (const Spelling& s : table)
        if (startsWith(text, s.text, s.letters) && endsAsWord(text.substr(s.text.size())))
            keepLonger(best, {s.scale, s.offset, s.isGauge, s.text.size()});
}

/// "lb-ft", "kgf/mm2": a spelling of one table, a joint, a spelling of the other.
void matchPair(std::optional<Unit>& best, std::span<const Spelling> first,
               std::span<const std::string_view> joints, std::span<const Spelling> second, bool divided,
               std::string_view text) {
    for (const Spelling& a : first) {
        if (a.isGauge || !startsWith(text, a.text))
            continue;
        for (const std::string_view joint : joints) {
            const std::size_t at = a.text.size() + joint.size();
            if (!startsWith(text.substr(a.text.size()), joint))
                continue;
            for (const Spelling& b : second)
                if (!b.isGauge && startsWith(text.substr(at), b.text) &&
                    endsAsWord(text.substr(at + b.text.size())))
                    keepLonger(best, {divided ? a.scale / b.scale : a.scale * b.scale, 0, false,
                                      at + b.text.size()});
        }
    }
}

} // namespace

std::optional<Unit> unitAt(Kind kind, std::string_view text) {
    std::optional<Unit> best;
    switch (kind) {
    case Kind::Length:
        matchPlain(best, kLengths, text);
        break;
    case Kind::Area:
        matchPlain(best, kAreas, text);
        break;
    case Kind::Force:
        matchPlain(best, kForces, text);
        matchPlain(best, kTons, text);
        break;
    case Kind::Rate:
        matchPair(best, kForces, kPer, kLengths, true, text);
        break;
    case Kind::Torque:
        matchPair(best, kForces, kTimes, kLengths, false, text);
        matchPair(best, kLengths, kTimes, kForces, false, text);
        break;
    case Kind::Stress:
        // "mPa" is a millipascal to whoever knows better and a slip to whoever does not.
        if (!startsWith(text, "mPa", Case::Exact))
            matchPlain(best, kStresses, text);
        matchPair(best, kForces, kPer, kAreas, true, text);
        break;
    case Kind::Angle:
        matchPlain(best, kAngles, text);
        break;
    case Kind::Temperature:
        matchPlain(best, kTemperatures, text);
        break;
    }
    return best;
}

} // namespace pw::units
