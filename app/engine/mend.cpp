#include "app/engine/mend.h"

#include "app/engine/mend_trials.h"
#include "app/engine/model_cache.h"
#include "core/jobfile/json.h"
#include "core/loadpath/setup.h"
#include "core/util/say.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <map>

namespace pw::engine {

namespace {

using verdict::Check;
using verdict::Grade;

/// Checks of a whole tool that one search may cost; what is not found by then is not offered.
constexpr int kMostWholeChecks = 14;
constexpr int kMostWholeTriesAValue = 3, kMostChangesACheck = 2, kMostPlates = 5;

/// Does it take the plate's bending to know?
bool hangsOnPlate(const std::string& id) {
    return (id.starts_with("plate.") && id != "plate.ligament") || id == "land.tilt" ||
           id == "screw.hung_station" || id == "screw.torque_window" || id == "screw.overrun";
}

bool isMended(const Report& report, const Check& check) {
    const Check* now = report.find(check.id);
    // Some checks go away with what they are about (hammering).
    return !now || now->grade == Grade::Holds;
}

class Search {
public:
    Search(const job::Job& job, const Report& report, const CheckOptions& options)
        : m_job(job), m_report(report), m_whole(options) {
        m_whole.mend = m_whole.spread = false;
        m_whole.at.clear();
        if (!m_whole.models)
            m_whole.models = std::make_shared<ModelCache>();
        m_quick = m_whole;
        m_quick.bend = false;
    }

    std::vector<Change> run() {
        std::vector<Change> changes;
        if (auto plate = plateThatHolds())
            changes.push_back(std::move(*plate));
        for (const Check& check : m_report.checks) {
            if (check.grade == Grade::Holds || check.grade == Grade::Incomplete)
                continue;
            int found = 0;
            for (const Trial& trial : trialsFor(check, m_job, m_report)) {
                if (found >= kMostChangesACheck)
                    break;
                if (auto change = tryOut(check, trial)) {
                    ++found;
                    if (std::find(changes.begin(), changes.end(), *change) == changes.end())
                        changes.push_back(std::move(*change));
                }
            }
        }
        return changes;
    }

private:
    /// Where the plate itself is poor: the thinnest in which nothing is any more.
    Found<Change> plateThatHolds() {
        const auto isPoor = [](const Check& c) {
            return (c.id == "plate.collapse" || c.id == "plate.set") && c.grade != Grade::Holds;
        };
        const auto poor = std::find_if(m_report.checks.begin(), m_report.checks.end(), isPoor);
        if (poor == m_report.checks.end())
            return std::nullopt;
        const Check* folding = m_report.find("plate.collapse");
        for (const Trial& trial : trialsFor(folding ? *folding : *poor, m_job, m_report)) {
            if (trial.field != "plate.thickness")
                continue;
            for (std::size_t i = 0; i < std::min<std::size_t>(trial.values.size(), kMostPlates); ++i)
                if (const Report* after = tried(trial, trial.values[i]);
                    after && after->grade == Grade::Holds)
                    return Change{poor->id, wordsFor(*poor, trial, trial.values[i], *after), trial.field,
                                  trial.values[i], after->grade};
        }
        return std::nullopt;
    }

    Found<Change> tryOut(const Check& check, const Trial& trial) {
        int tries = 0;
        for (const std::string& value : trial.values) {
            if (!mightMend(check, trial, value))
                continue;
            if (++tries > kMostWholeTriesAValue)
                return std::nullopt;
            const bool quick = leavesPlateAlone(trial.field) && !hangsOnPlate(check.id);
            const Report* after = quick ? triedOnSamePlate(trial, value) : tried(trial, value);
            if (!after)
                return std::nullopt;
            const auto isGood = [&] { return isMended(*after, check) && after->grade <= m_report.grade; };
            if (!isGood())
                continue;
            if (quick) { // what it leaves of the whole is only known when all of it is checked again
                after = wholly(trial, value);
                if (!isGood())
                    continue;
            }
            return Change{check.id, wordsFor(check, trial, value, *after), trial.field, value, after->grade};
        }
        return std::nullopt;
    }

    /// A look that costs no bending of the plate.
    bool mightMend(const Check& check, const Trial& trial, const std::string& value) {
        const job::Job changed = changedBy(trial, value);
        if (check.id == "plate.tip") { // statics: only the bearing matters
            const auto setup = loadpath::setUp(changed);
            return setup.bearing && check.margin && check.wanted && m_report.bearingOutside &&
                   *check.margin * (setup.bearing->outside / *m_report.bearingOutside) >= *check.wanted;
        }
        return hangsOnPlate(check.id) || isMended(engine::check(changed, m_quick), check);
    }

    /// The changed job checked whole, once; none when the search has cost enough.
    const Report* tried(const Trial& trial, const std::string& value) {
        if (const auto known = m_tried.find(keyOf(trial, value)); known != m_tried.end())
            return &known->second;
        if (m_wholeChecks >= kMostWholeChecks)
            return nullptr;
        ++m_wholeChecks;
        return wholly(trial, value);
    }

    const Report* wholly(const Trial& trial, const std::string& value) {
        const auto [at, isNew] = m_tried.try_emplace(keyOf(trial, value));
        if (isNew)
            at->second = engine::check(changedBy(trial, value), m_whole);
        return &at->second;
    }

    /// With the plate's own checks as they were.
    const Report* triedOnSamePlate(const Trial& trial, const std::string& value) {
        const auto [at, isNew] = m_triedQuickly.try_emplace(keyOf(trial, value));
        if (isNew)
            at->second = withSamePlate(engine::check(changedBy(trial, value), m_quick));
        return &at->second;
    }

    static std::string keyOf(const Trial& trial, const std::string& value) {
        return trial.field + "=" + value;
    }

    job::Job changedBy(const Trial& trial, const std::string& value) const {
        job::Job changed = m_job;
        trial.put(changed, value);
        return changed;
    }

    /// Neither the plate nor what presses on it hangs on this figure: its bending need not be worked out
    /// again.
    bool leavesPlateAlone(const std::string& field) const {
        constexpr std::array kAlone{
            "screw.grade", "screw.nut_grade", "screw.engagement", "screw.usable_length", "screw.free_length",
            "legs.grade",  "hub.bolts.",      "hub.jaws.",        "ram.rod_grade",       "back."};
        return std::any_of(kAlone.begin(), kAlone.end(),
                           [&](const char* start) { return field.starts_with(start); });
    }

    Report withSamePlate(Report quick) const {
        std::erase_if(quick.checks, [](const Check& c) { return hangsOnPlate(c.id); });
        for (const Check& check : m_report.checks)
            if (hangsOnPlate(check.id))
                quick.checks.push_back(check);
        quick.grade = verdict::worst(quick.checks);
        return quick;
    }

    /// A figure in the reader's way; a grade's name is one and the same everywhere.
    static std::string shownValue(const std::string& field, const std::string& value) {
        if (field.ends_with("grade") || field == "plate.steel")
            return value;
        return field == "screw.lubrication" ? say(value.c_str()) : units::shownText(value);
    }

    static std::string then(const std::string& words, const std::string& title, Grade whole) {
        switch (whole) {
        case Grade::Holds:
            return say("%1. Then it holds.", {words});
        case Grade::Thin:
            return say("%1. Then %2 holds; the whole is thin.", {words, title});
        case Grade::Sets:
            return say("%1. Then %2 holds; the whole sets.", {words, title});
        case Grade::Breaks:
            return say("%1. Then %2 holds; the whole breaks.", {words, title});
        case Grade::Incomplete:
            break;
        }
        return say("%1. Then %2 holds; the whole incomplete.", {words, title});
    }

    std::string wordsFor(const Check& check, const Trial& trial, const std::string& value,
                         const Report& after) const {
        std::string words = trial.words;
        if (const std::size_t at = words.find("%1"); at != std::string::npos)
            words.replace(at, 2, shownValue(trial.field, value));
        words = then(words, inSentence(check.title), after.grade);
        if (trial.field == "plate.thickness" && after.plate.massKg && m_report.plate.massKg)
            words = say("%1 %2 heavier.",
                        {words, units::show(units::Mass::fromKg(*after.plate.massKg - *m_report.plate.massKg),
                                            m_job.preferred)});
        return words;
    }

    const job::Job& m_job;
    const Report& m_report;
    CheckOptions m_whole, m_quick;
    std::map<std::string, Report> m_tried, m_triedQuickly;
    int m_wholeChecks = 0;
};

} // namespace

jobfile::Tree valueOf(const Change& change) {
    using jobfile::Tree;
    const std::string& value = change.value;
    if (value == "true" || value == "false")
        return Tree(value == "true");
    if (value.starts_with("["))
        if (auto list = jobfile::fromJson(value))
            return std::move(*list);
    const bool isCount = change.field.ends_with("count") || change.field == "plate.stacked";
    int count = 0;
    if (isCount && std::from_chars(value.data(), value.data() + value.size(), count).ec == std::errc())
        return Tree(count);
    return Tree(value);
}

std::vector<Change> mends(const job::Job& job, const Report& report, const CheckOptions& options) {
    // Rated: the load was chosen so that all holds. Wrong or missing figures come first.
    if (report.grade == Grade::Incomplete || report.load.source == "rated")
        return {};
    return Search(job, report, options).run();
}

} // namespace pw::engine
