#pragma once

#include "core/job/job.h"
#include "core/jobfile/tree.h"
#include "core/units/parse.h"
#include "core/util/result.h"
#include "core/util/say.h"

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

/// The small language in which the sections of the job file are read: one line a field, giving its key, where
/// it goes and its limits. A wrong figure becomes a problem with its path and leaves its target empty; a key
/// nobody asked for is collected. Null counts as left out.
namespace pw::jobfile {

/// What was found out while reading, for all groups together.
struct Findings {
    util::Problems problems;
    std::vector<std::string> unknownKeys;
    std::vector<std::string> suggestions; ///< one an unknown key: the path that was probably meant, or empty
    int inchFigures = 0, metricFigures = 0;
};

/// What a quantity may be, both ends included. NaN is outside every one.
template<class Q>
struct Limits {
    Q low, high;
    std::string_view words; ///< "from 0.1 mm to 10 m, for instance 20 mm"
};

// A figure beyond these is a slip of the unit or the point, not a tool (common practice, no published
// source).
inline constexpr Limits<units::Length> kSize{units::Length::fromMm(0.1), units::Length::fromMm(1e4),
                                             PW_SAY("from 0.1 mm to 10 m, for instance 20 mm or 3/4 in")};
inline constexpr Limits<units::Length> kSizeOrZero{units::Length::fromMm(0), units::Length::fromMm(1e4),
                                                   PW_SAY("from 0 mm to 10 m, for instance 20 mm or 3/4 in")};
inline constexpr Limits<units::Length> kPlace{units::Length::fromMm(-1e4), units::Length::fromMm(1e4),
                                              PW_SAY("from -10 m to 10 m, for instance 50 mm or -2 in")};
inline constexpr Limits<units::Length> kSmall{units::Length::fromMm(0), units::Length::fromMm(50),
                                              PW_SAY("from 0 mm to 50 mm, for instance 1.5 mm or 1/16 in")};
inline constexpr Limits<units::Force> kForce{
    units::Force::fromN(0.01), units::Force::fromN(1e8),
    "more than 0 N and at most 100000 kN, for instance 7500 N or 1690 lbf"};
inline constexpr Limits<units::Rate> kRate{
    units::Rate::fromNPerMm(1e-3), units::Rate::fromNPerMm(1e7),
    PW_SAY("from 0.001 N/mm to 10000000 N/mm, for instance 12 N/mm or 68 lb/in")};
inline constexpr Limits<units::Area> kArea{
    units::Area::fromMm2(0.1), units::Area::fromMm2(1e7),
    PW_SAY("from 0.1 mm2 to 10000000 mm2, for instance 1600 mm2 or 2.5 in2")};
inline constexpr Limits<units::Stress> kPressure{
    units::Stress::fromMpa(1e-3), units::Stress::fromMpa(1e4),
    PW_SAY("from 0.01 bar to 100000 bar, for instance 700 bar or 10000 psi")};
inline constexpr Limits<units::Stress> kStrength{
    units::Stress::fromMpa(1), units::Stress::fromMpa(5000),
    PW_SAY("from 1 MPa to 5000 MPa, for instance 250 MPa or 36 ksi")};
inline constexpr Limits<units::Stress> kModulus{
    units::Stress::fromMpa(1000), units::Stress::fromMpa(1e6),
    PW_SAY("from 1000 MPa to 1000000 MPa, for instance 205 GPa or 29700 ksi")};
inline constexpr Limits<units::Angle> kTurn{units::Angle::fromDegree(-360), units::Angle::fromDegree(360),
                                            PW_SAY("from -360 deg to 360 deg, for instance 30 deg")};
inline constexpr Limits<units::Temperature> kWarmth{
    units::Temperature::fromCelsius(-100), units::Temperature::fromCelsius(1200),
    PW_SAY("from -100 C to 1200 C, for instance 20 C or 68 F")};

/// Bytes of a name, a title or a remark; of the notes.
inline constexpr std::size_t kLongestText = 10000, kLongestNotes = 200000;

/// A word of the file and what it means.
template<class E>
struct Word {
    std::string_view text;
    E meaning;
};

class FieldReader {
public:
    /// `group` is an object, or null when it was left out. Both must outlive the reader.
    FieldReader(const Tree* group, std::string path, Findings& findings);

    template<class Q>
    void quantity(std::string_view key, job::Given<Q>& out, const Limits<Q>& limits) {
        if (const Tree* value = take(key))
            if (const auto base = figure(units::kindOf<Q>(), pathOf(key), *value, plain(limits)))
                out = Q::fromBase(*base);
    }
    template<class Q>
    void range(std::string_view key, job::Given<units::Range<Q>>& out, const Limits<Q>& limits) {
        if (const Tree* value = take(key))
            if (const auto base = figureRange(units::kindOf<Q>(), pathOf(key), *value, plain(limits)))
                out = units::Range<Q>{Q::fromBase(base->low), Q::fromBase(base->high)};
    }
    /// A figure that must be there; false (and a problem, when it is missing) if it is not.
    template<class Q>
    bool need(std::string_view key, Q& out, const Limits<Q>& limits) {
        job::Given<Q> given;
        quantity(key, given, limits);
        out = given.value_or(Q());
        return given.has_value() || missing(key);
    }
    template<class Q>
    bool need(std::string_view key, units::Range<Q>& out, const Limits<Q>& limits) {
        job::Given<units::Range<Q>> given;
        range(key, given, limits);
        out = given.value_or(units::Range<Q>());
        return given.has_value() || missing(key);
    }
    bool need(std::string_view key, job::PointXY& out);

    void whole(std::string_view key, job::Given<int>& out, int low, int high);
    /// `example` ends the message about one out of range: "12e-6, that of steel".
    void number(std::string_view key, job::Given<double>& out, double low, double high,
                std::string_view example = {});
    void numberRange(std::string_view key, job::Given<units::Range<double>>& out, double low, double high,
                     std::string_view example = {});
    void flag(std::string_view key, bool& out);
    void flags(std::string_view key, std::vector<bool>& out, std::size_t most);
    void numbers(std::string_view key, std::vector<double>& out, double low, double high, std::size_t most);
    /// `most` bytes; a longer one is a problem.
    void text(std::string_view key, std::string& out, std::size_t most = kLongestText);
    void thread(std::string_view key, std::string& out);
    void screwGrade(std::string_view key, std::string& out, std::string_view thread);
    void nutGrade(std::string_view key, std::string& out, std::string_view thread);
    void material(std::string_view key, job::Given<job::Material>& out);
    void points(std::string_view key, std::vector<job::PointXY>& out, std::size_t most);
    /// Corners of a polygon: ["x", "y"], ["x", "y", bulge] or {"at": ["x", "y"], "bulge": number}.
    void corners(std::string_view key, std::vector<shape::Vertex>& out, std::size_t most);

    template<class E, std::size_t N>
    void choice(std::string_view key, E& out, const Word<E> (&words)[N]) {
        job::Given<E> given;
        choice(key, given, words);
        out = given.value_or(out);
    }
    template<class E, std::size_t N>
    void choice(std::string_view key, job::Given<E>& out, const Word<E> (&words)[N]) {
        const Tree* value = take(key);
        if (!value)
            return;
        std::string_view texts[N];
        for (std::size_t i = 0; i < N; ++i)
            texts[i] = words[i].text;
        if (const auto chosen = chosenWord(pathOf(key), *value, texts))
            out = words[*chosen].meaning;
    }

    /// Reads an object with `read(FieldReader&)`; not called when it was left out or is no object.
    template<class Read>
    void group(std::string_view key, Read read) {
        const Tree* value = take(key);
        if (!value || !isGroup(pathOf(key), *value))
            return;
        FieldReader inner(value, pathOf(key), m_findings);
        read(inner);
        inner.close();
    }
    /// The same for a part of the job that is empty when left out.
    template<class T>
    void part(std::string_view key, job::Given<T>& out, void (*read)(FieldReader&, T&)) {
        group(key, [&](FieldReader& inner) { read(inner, out.emplace()); });
    }
    template<class T>
    void part(std::string_view key, T& out, void (*read)(FieldReader&, T&)) {
        group(key, [&](FieldReader& inner) { read(inner, out); });
    }
    /// A list of objects; `read` says whether the row may be kept.
    template<class T>
    void rows(std::string_view key, std::vector<T>& out, std::size_t most, bool (*read)(FieldReader&, T&)) {
        const Tree::List* items = list(key, most);
        for (std::size_t i = 0; items && i < items->size(); ++i) {
            const std::string path = pathOf(key) + "[" + std::to_string(i) + "]";
            // A row left open by an edit further down the list is an empty one.
            const Tree* item = (*items)[i].isNull() ? nullptr : &(*items)[i];
            if (item && !isGroup(path, *item))
                continue;
            FieldReader inner(item, path, m_findings);
            T row;
            if (read(inner, row))
                out.push_back(std::move(row));
            inner.close();
        }
    }

    void acceptKey(std::string_view key) { m_known.push_back(key); } ///< read elsewhere
    std::size_t problemCount() const { return m_findings.problems.size(); }
    bool has(std::string_view key) const; ///< typed, right or wrong
    std::string pathOf(std::string_view key) const;
    void problem(std::string_view key, std::string message);
    /// Says that the figure is missing, unless it was typed (and so has its own problem). Always false.
    bool missing(std::string_view key);
    /// Collects the keys that nobody asked for. Call once, at the end.
    void close();

private:
    struct PlainLimits {
        double low, high;
        std::string_view words;
    };
    template<class Q>
    static PlainLimits plain(const Limits<Q>& limits) {
        return {limits.low.base(), limits.high.base(), limits.words};
    }

    const Tree* take(std::string_view key);
    const Tree::List* list(std::string_view key, std::size_t most);
    bool isGroup(const std::string& path, const Tree& value);
    std::optional<double> figure(units::Kind, const std::string& path, const Tree& value, const PlainLimits&);
    std::optional<units::Range<double>> figureRange(units::Kind, const std::string& path, const Tree& value,
                                                    const PlainLimits&);
    std::optional<double> plainNumber(const std::string& path, const Tree& value, double low, double high,
                                      std::string_view example = {});
    std::optional<std::size_t> chosenWord(const std::string& path, const Tree& value,
                                          std::span<const std::string_view> words);
    std::optional<job::PointXY> point(const std::string& path, const Tree& value);
    std::optional<shape::Vertex> corner(const std::string& path, const Tree& value);
    /// Text that must be known: `trouble` says what is wrong with it.
    template<class Trouble>
    void checkedName(std::string_view key, std::string& out, Trouble trouble);
    void countUnits(units::Kind kind, std::string_view text);
    void add(std::string path, std::string message);

    const Tree* m_group;
    std::string m_path;
    Findings& m_findings;
    std::vector<std::string_view> m_known;
};

/// Did the person who typed this length or force think in inches and pounds?
bool isTypedInInches(std::string_view text);

} // namespace pw::jobfile
