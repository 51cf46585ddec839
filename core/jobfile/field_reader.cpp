#include "core/jobfile/field_reader.h"

#include "core/jobfile/known_names.h"
#include "core/jobfile/words.h"
#include "core/util/say.h"

#include <algorithm>
#include <cmath>

namespace pw::jobfile {

namespace {

using units::Kind;
using units::Range;

/// A side that turns through almost a full circle; more is a slip.
constexpr double kMostBulge = 50;

std::string example(Kind kind) {
    return say("for instance %1", {say(units::exampleOf(kind).data())});
}

/// A plain number in a file has the base unit, but angles are kept in radians and written in degrees.
double fromPlain(Kind kind, double value) {
    return kind == Kind::Angle ? units::Angle::fromDegree(value).base() : value;
}

std::string outside(const std::string& shown, std::string_view words) {
    return say("%1 is out of range; it must be %2", {shown, words});
}

std::string shown(double value) {
    return describe(Tree(value));
}

} // namespace

FieldReader::FieldReader(const Tree* group, std::string path, Findings& findings)
    : m_group(group), m_path(std::move(path)), m_findings(findings) {}

std::string FieldReader::pathOf(std::string_view key) const {
    return m_path.empty() ? std::string(key) : m_path + "." + std::string(key);
}

void FieldReader::add(std::string path, std::string message) {
    // Messages are put together from pieces; as a sentence they agree with those of the quantities.
    if (message.front() >= 'a' && message.front() <= 'z')
        message.front() = static_cast<char>(message.front() - 'a' + 'A');
    if (message.back() != '.' && message.back() != '?')
        message += '.';
    m_findings.problems.push_back({std::move(path), std::move(message)});
}

void FieldReader::problem(std::string_view key, std::string message) {
    add(key.empty() ? m_path : pathOf(key), std::move(message));
}

bool FieldReader::has(std::string_view key) const {
    const Tree* value = m_group ? m_group->find(key) : nullptr;
    return value && !value->isNull();
}

bool FieldReader::missing(std::string_view key) {
    if (!has(key))
        problem(key, say("missing; a row needs it as well as its other figures"));
    return false;
}

const Tree* FieldReader::take(std::string_view key) {
    m_known.push_back(key);
    return has(key) ? m_group->find(key) : nullptr;
}

void FieldReader::close() {
    if (!m_group)
        return;
    for (const auto& [key, value] : *m_group->members())
        if (std::ranges::find(m_known, key) == m_known.end()) {
            m_findings.unknownKeys.push_back(pathOf(key));
            const std::string_view meant = nearest(key, m_known);
            m_findings.suggestions.push_back(meant.empty() ? "" : pathOf(meant));
        }
}

bool FieldReader::isGroup(const std::string& path, const Tree& value) {
    if (value.members())
        return true;
    add(path, say("must be a group of figures in braces { }, not %1", {describe(value)}));
    return false;
}

const Tree::List* FieldReader::list(std::string_view key, std::size_t most) {
    const Tree* value = take(key);
    if (!value)
        return nullptr;
    const Tree::List* items = value->items();
    if (!items)
        problem(key, say("must be a list in brackets [ ], not %1", {describe(*value)}));
    else if (items->size() > most)
        problem(key, say("has %1 entries; at most %2 can be handled", {items->size(), most}));
    else
        return items;
    return nullptr;
}

void FieldReader::countUnits(Kind kind, std::string_view text) {
    if (kind == Kind::Length || kind == Kind::Force)
        ++(isTypedInInches(text) ? m_findings.inchFigures : m_findings.metricFigures);
}

std::optional<double> FieldReader::figure(Kind kind, const std::string& path, const Tree& value,
                                          const PlainLimits& limits) {
    double base = 0;
    if (const double* number = value.number()) {
        base = fromPlain(kind, *number);
    } else if (const std::string* text = value.text()) {
        const auto parsed = units::parseBase(kind, *text);
        if (!parsed) {
            add(path, parsed.problem().message);
            return {};
        }
        base = *parsed;
        countUnits(kind, *text);
    } else {
        add(path, say("must be a figure (%1), not %2; %3",
                      {say(units::nameOf(kind).data()), describe(value), example(kind)}));
        return {};
    }
    if (base >= limits.low && base <= limits.high)
        return base;
    add(path, outside(describe(value), say(limits.words.data())));
    return {};
}

std::optional<Range<double>> FieldReader::figureRange(Kind kind, const std::string& path, const Tree& value,
                                                      const PlainLimits& limits) {
    Range<double> range;
    if (const Tree::List* items = value.items()) {
        if (items->size() != 2) {
            add(path, say("a range has two figures, [low, high]; %1 stand here", {items->size()}));
            return {};
        }
        const auto low = figure(kind, path + "[0]", (*items)[0], limits);
        const auto high = figure(kind, path + "[1]", (*items)[1], limits);
        if (!low || !high)
            return {};
        range = {*low, *high};
        if (range.low > range.high) {
            add(path, say("the low end %1 is more than the high end %2; swap them",
                          {describe((*items)[0]), describe((*items)[1])}));
            return {};
        }
        return range;
    }
    const std::string* text = value.text();
    if (!text) {
        const auto one = figure(kind, path, value, limits);
        return one ? std::optional(Range<double>::exactly(*one)) : std::nullopt;
    }
    const auto parsed = units::parseRangeBase(kind, *text);
    if (!parsed) {
        add(path, parsed.problem().message);
        return {};
    }
    countUnits(kind, *text);
    if (parsed->low >= limits.low && parsed->high <= limits.high && parsed->low <= parsed->high)
        return *parsed;
    add(path, outside(describe(value), say(limits.words.data())));
    return {};
}

std::optional<double> FieldReader::plainNumber(const std::string& path, const Tree& value, double low,
                                               double high, std::string_view example) {
    const double* number = value.number();
    std::string words = say("from %1 to %2", {shown(low), shown(high)});
    if (!example.empty())
        words = say("%1, for instance %2", {words, example});
    if (!number)
        add(path, say("must be a plain number %1, not %2", {words, describe(value)}));
    else if (!(*number >= low && *number <= high))
        add(path, outside(describe(value), words));
    else
        return *number;
    return {};
}

void FieldReader::whole(std::string_view key, job::Given<int>& out, int low, int high) {
    const Tree* value = take(key);
    if (!value)
        return;
    const auto number = plainNumber(pathOf(key), *value, low, high);
    if (number && *number != std::floor(*number))
        problem(key, say("must be a whole number, not %1", {describe(*value)}));
    else if (number)
        out = static_cast<int>(*number);
}

void FieldReader::number(std::string_view key, job::Given<double>& out, double low, double high,
                         std::string_view example) {
    if (const Tree* value = take(key))
        out = plainNumber(pathOf(key), *value, low, high, example);
}

void FieldReader::numberRange(std::string_view key, job::Given<Range<double>>& out, double low, double high,
                              std::string_view example) {
    const Tree* value = take(key);
    if (!value)
        return;
    const Tree::List* items = value->items();
    if (!items) {
        if (const auto one = plainNumber(pathOf(key), *value, low, high, example))
            out = Range<double>::exactly(*one);
        return;
    }
    if (items->size() != 2)
        return problem(key, say("a range has two figures, [low, high]; %1 stand here", {items->size()}));
    const auto first = plainNumber(pathOf(key) + "[0]", (*items)[0], low, high, example);
    const auto second = plainNumber(pathOf(key) + "[1]", (*items)[1], low, high, example);
    if (!first || !second)
        return;
    if (*first > *second)
        return problem(key, say("the low end %1 is more than the high end %2; swap them",
                                {shown(*first), shown(*second)}));
    out = Range<double>{*first, *second};
}

void FieldReader::flag(std::string_view key, bool& out) {
    const Tree* value = take(key);
    if (!value)
        return;
    if (const bool* truth = value->boolean())
        out = *truth;
    else
        problem(key, say("must be true or false, not %1", {describe(*value)}));
}

void FieldReader::flags(std::string_view key, std::vector<bool>& out, std::size_t most) {
    const Tree::List* items = list(key, most);
    std::vector<bool> read;
    for (std::size_t i = 0; items && i < items->size(); ++i) {
        const bool* truth = (*items)[i].boolean();
        if (!truth)
            return problem(key,
                           say("entry %1 must be true or false, not %2", {i + 1, describe((*items)[i])}));
        read.push_back(*truth);
    }
    out = std::move(read);
}

void FieldReader::numbers(std::string_view key, std::vector<double>& out, double low, double high,
                          std::size_t most) {
    const Tree::List* items = list(key, most);
    std::vector<double> read;
    for (std::size_t i = 0; items && i < items->size(); ++i) {
        const auto number = plainNumber(pathOf(key) + "[" + std::to_string(i) + "]", (*items)[i], low, high);
        if (!number)
            return;
        read.push_back(*number);
    }
    out = std::move(read);
}

void FieldReader::text(std::string_view key, std::string& out, std::size_t most) {
    const Tree* value = take(key);
    if (!value)
        return;
    if (const std::string* text = value->text(); text && text->size() > most)
        problem(key, say("is %1 characters long; at most %2 can be handled", {text->size(), most}));
    else if (text)
        out = *text;
    else
        problem(key, say("must be text in quotes, not %1", {describe(*value)}));
}

template<class Trouble>
void FieldReader::checkedName(std::string_view key, std::string& out, Trouble trouble) {
    std::string name;
    text(key, name);
    if (name.empty())
        return;
    if (const auto wrong = trouble(name))
        problem(key, wrong->message);
    else
        out = std::move(name);
}

void FieldReader::thread(std::string_view key, std::string& out) {
    checkedName(key, out, threadTrouble);
}

void FieldReader::screwGrade(std::string_view key, std::string& out, std::string_view thread) {
    checkedName(key, out, [&](std::string_view name) { return screwGradeTrouble(name, thread); });
}

void FieldReader::nutGrade(std::string_view key, std::string& out, std::string_view thread) {
    checkedName(key, out, [&](std::string_view name) { return nutGradeTrouble(name, thread); });
}

void FieldReader::material(std::string_view key, job::Given<job::Material>& out) {
    const Tree* value = has(key) ? m_group->find(key) : nullptr;
    job::Material material;
    if (!value || value->text()) {
        text(key, material.name);
        if (material.name.empty())
            return;
        if (const auto wrong = materialTrouble(material))
            problem(key, wrong->message);
        else
            out = std::move(material);
        return;
    }
    group(key, [&](FieldReader& figures) {
        const std::size_t before = problemCount();
        figures.text("name", material.name);
        figures.quantity("yield", material.yield, kStrength);
        figures.quantity("ultimate", material.ultimate, kStrength);
        figures.quantity("E", material.E, kModulus);
        figures.number("nu", material.nu, 0, 0.499);
        figures.number("density", material.density, 100, 25000);
        figures.number("expansion", material.expansion, 1e-6, 1e-4, say("12e-6 (steel's, for each kelvin)"));
        if (problemCount() > before)
            return;
        if (const auto wrong = materialTrouble(material))
            figures.problem(wrong->field, wrong->message);
        else
            out = std::move(material);
    });
}

std::optional<std::size_t> FieldReader::chosenWord(const std::string& path, const Tree& value,
                                                   std::span<const std::string_view> words) {
    const std::string* text = value.text();
    if (text)
        if (const auto found = std::ranges::find(words, *text); found != words.end())
            return static_cast<std::size_t>(found - words.begin());
    const std::string_view meant = text ? nearest(*text, words) : std::string_view();
    add(path, meant.empty()
                  ? say("%1 is none of: %2", {describe(value), listed(words)})
                  : say("%1 is none of: %2; did you mean \"%3\"?", {describe(value), listed(words), meant}));
    return {};
}

std::optional<job::PointXY> FieldReader::point(const std::string& path, const Tree& value) {
    const Tree::List* items = value.items();
    if (!items || items->size() != 2) {
        add(path, say("must be a place [x, y], for instance [\"50 mm\", \"0 mm\"], not %1",
                      {items ? say("a list of %1", {items->size()}) : describe(value)}));
        return {};
    }
    const auto x = figure(Kind::Length, path + "[0]", (*items)[0], plain(kPlace));
    const auto y = figure(Kind::Length, path + "[1]", (*items)[1], plain(kPlace));
    if (!x || !y)
        return {};
    return job::PointXY{units::Length::fromMm(*x), units::Length::fromMm(*y)};
}

std::optional<shape::Vertex> FieldReader::corner(const std::string& path, const Tree& value) {
    std::optional<job::PointXY> at;
    std::optional<double> bulge = 0;
    if (value.members()) {
        FieldReader figures(&value, path, m_findings);
        job::PointXY place;
        if (figures.need("at", place))
            at = place;
        if (const Tree* given = figures.take("bulge"))
            bulge = plainNumber(figures.pathOf("bulge"), *given, -kMostBulge, kMostBulge);
        figures.close();
    } else if (const Tree::List* items = value.items(); items && items->size() == 3) {
        at = point(path, Tree::List{(*items)[0], (*items)[1]});
        bulge = plainNumber(path + "[2]", (*items)[2], -kMostBulge, kMostBulge);
    } else {
        at = point(path, value);
    }
    if (!at || !bulge)
        return {};
    return shape::Vertex{{at->x.mm(), at->y.mm()}, *bulge};
}

bool FieldReader::need(std::string_view key, job::PointXY& out) {
    const Tree* value = take(key);
    if (!value)
        return missing(key);
    const auto read = point(pathOf(key), *value);
    out = read.value_or(job::PointXY());
    return read.has_value();
}

void FieldReader::points(std::string_view key, std::vector<job::PointXY>& out, std::size_t most) {
    const Tree::List* items = list(key, most);
    bool whole = true;
    std::vector<job::PointXY> read;
    for (std::size_t i = 0; items && i < items->size(); ++i) {
        const auto place = point(pathOf(key) + "[" + std::to_string(i) + "]", (*items)[i]);
        whole = whole && place;
        read.push_back(place.value_or(job::PointXY()));
    }
    if (whole)
        out = std::move(read);
}

void FieldReader::corners(std::string_view key, std::vector<shape::Vertex>& out, std::size_t most) {
    const Tree::List* items = list(key, most);
    bool whole = true;
    std::vector<shape::Vertex> read;
    for (std::size_t i = 0; items && i < items->size(); ++i) {
        const auto vertex = corner(pathOf(key) + "[" + std::to_string(i) + "]", (*items)[i]);
        whole = whole && vertex;
        read.push_back(vertex.value_or(shape::Vertex()));
    }
    if (whole)
        out = std::move(read);
}

bool isTypedInInches(std::string_view typed) {
    std::string text(typed);
    for (char& c : text)
        if (c >= 'A' && c <= 'Z')
            c = static_cast<char>(c - 'A' + 'a');
    for (const std::string_view mark :
         {"\"", "'", "″", "′", "”", "in", "ft", "foot", "feet", "lb", "thou", "mil"})
        if (text.find(mark) != std::string::npos)
            return true;
    // The US short ton, but not the metric tonne.
    const std::size_t ton = text.find("ton");
    return ton != std::string::npos && text.substr(ton, 5) != "tonne";
}

} // namespace pw::jobfile
