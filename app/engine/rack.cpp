#include "app/engine/rack.h"

#include "app/engine/advice.h"
#include "app/engine/model_cache.h"
#include "app/engine/write.h"
#include "core/job/assumed.h"
#include "core/material/material.h"
#include "core/thread/thread.h"
#include "core/util/say.h"
#include "geometry/exchange/cut_rates.h"
#include "geometry/outline/build.h"
#include "geometry/placement/spacing.h"

#include <algorithm>
#include <atomic>
#include <cmath>
#include <future>
#include <map>
#include <mutex>
#include <set>

namespace pw::engine {

namespace {

using placement::FitAnswer;
using placement::ShortOf;
using units::Length;
using verdict::Grade;

constexpr int kWorkers = 2;

/// Square millimetres a minute that a band saw takes out of mild steel. Common practice, no published source.
constexpr double kSawed = 2000;

/// So many thicknesses and steels that do not hold are tried with fewer stations at a time.
constexpr std::size_t kMostHalved = 6;

/// More checks than this are not waited for; thicknesses are then rounded down to a grain, mm.
constexpr std::size_t kMostKeys = 110;
constexpr double kGrains[] = {0.1, 0.25, 0.5, 1};

/// What is short by more than this part of the plate is no near miss.
constexpr double kNear = 0.25;

/// Does `work(i)` for each, in two threads; what one throws comes out.
template<class Work>
void inParallel(std::size_t count, Work work) {
    std::atomic<std::size_t> next{0};
    const auto run = [&] {
        for (std::size_t i = next++; i < count; i = next++)
            work(i);
    };
    std::vector<std::future<void>> others;
    for (int k = 1; k < kWorkers; ++k)
        others.push_back(std::async(std::launch::async, run));
    std::exception_ptr trouble;
    try {
        run();
    } catch (...) {
        next = count;
        trouble = std::current_exception();
    }
    for (auto& other : others)
        try {
            other.get();
        } catch (...) {
            trouble = std::current_exception();
        }
    if (trouble)
        std::rethrow_exception(trouble);
}

/// What a check depends on, of a piece.
using Key = std::tuple<long, std::string, int, int, int, long>;

std::string idOf(const job::Given<job::Material>& steel) {
    if (!steel)
        return {};
    std::string id = steel->name;
    const auto add = [&](double value) { id += "/" + std::to_string(value); };
    if (steel->yield)
        add(steel->yield->mpa());
    if (steel->ultimate)
        add(steel->ultimate->mpa());
    if (steel->E)
        add(steel->E->mpa());
    add(steel->nu.value_or(0));
    add(steel->density.value_or(0));
    return id;
}

Key keyOf(const job::Job& job) {
    const auto hundredths = [](const job::Given<Length>& l) { return l ? std::lround(l->mm() * 100) : -1; };
    return {hundredths(job.plate.thickness),          idOf(job.plate.steel),
            static_cast<int>(job.plate.tests.file),   static_cast<int>(job.plate.tests.bend),
            static_cast<int>(job.plate.tests.cracks), hundredths(job.plate.bore)};
}

/// The short form of a report: all that ranking asks for.
struct Sum {
    Grade grade = Grade::Incomplete;
    Found<double> margin, massKg;
    std::string weakest, reason;
};

/// The grades stand from good to bad, and what nobody could judge comes last.
int rankOf(Grade grade) {
    return static_cast<int>(grade);
}

/// The job with only every `step`-th station squeezed at a time, on a compress job of equal stations.
job::Job fewerAtATime(const job::Job& job, int count, int step) {
    job::Job fewer = job;
    fewer.stations.loaded.assign(static_cast<std::size_t>(count), false);
    for (int i = 0; i < count; i += step)
        fewer.stations.loaded[static_cast<std::size_t>(i)] = true;
    if (fewer.load.total) {
        const double part = 1.0 / step;
        fewer.load.total =
            units::Range<units::Force>{fewer.load.total->low * part, fewer.load.total->high * part};
    }
    return fewer;
}

class Ranking {
public:
    Ranking(const job::Job& job, const rack::RackReading& rack, const RackOptions& options)
        : m_job(job), m_rack(rack), m_options(options) {
        m_check.mend = m_check.spread = false;
        m_check.models = std::make_shared<ModelCache>();
        m_check.progress = [this](double, std::string_view) {
            if (m_stopped)
                return false;
            return tell();
        };
    }

    RackAnswer run() {
        m_answer.prefer = m_options.prefer;
        m_answer.preferred = m_job.preferred;
        m_answer.refused = m_rack.refused;
        if (!buildPlate())
            return std::move(m_answer);
        m_answer.pieces.resize(m_rack.rack.offcuts.size());
        step(0, 0.35, PW_SAY("Laying the plate on each piece"));
        inParallel(m_answer.pieces.size(), [&](std::size_t i) { layOn(i, false); });
        // Pieces whose shape is wrong are named with the others.
        std::erase_if(m_answer.pieces, [](const PieceAnswer& piece) { return piece.name.empty(); });
        step(0.35, 0.85, PW_SAY("Checking each thickness and steel"));
        checkAll();
        step(0.85, 0.95, PW_SAY("Looking for the best place"));
        const std::size_t best = std::min(m_options.best, m_answer.pieces.size());
        inParallel(best, [&](std::size_t i) { improve(m_answer.pieces[i]); });
        sort();
        step(0.95, 1, PW_SAY("Seeing what nearly fits"));
        tryFewerAtATime();
        if (!m_answer.pieces.empty() && m_answer.pieces.front().fits &&
            mayBeMade(m_answer.pieces.front().grade))
            m_answer.best = m_answer.pieces.front().name;
        return std::move(m_answer);
    }

private:
    void step(double from, double to, const char* what) {
        m_from = from;
        m_to = to;
        m_what = what;
        m_done = 0;
        m_all = 1;
        throwIfStopped(tell());
    }

    /// Asked from any thread.
    bool tell() {
        if (!m_options.progress)
            return true;
        const std::lock_guard lock(m_mutex);
        const double part =
            std::min(1.0, static_cast<double>(m_done) / static_cast<double>(std::max<std::size_t>(m_all, 1)));
        if (!m_options.progress(m_from + (m_to - m_from) * part, say(m_what)))
            m_stopped = true;
        return !m_stopped;
    }
    static void throwIfStopped(bool goesOn) {
        if (!goesOn)
            throw Stopped{};
    }

    bool buildPlate() {
        std::optional<Length> tapped;
        if (const auto thread = thread::parse(m_job.plate.boreThread))
            tapped = thread::tappingDrill(*thread);
        outline::Built built = outline::buildRegion(m_job, tapped);
        m_answer.problems = built.problems;
        m_answer.plate = built.region;
        for (const std::string& field : built.missing)
            m_answer.missing.push_back(missingFigure(field));
        if (!built.ok())
            return false;
        // A thread cannot be cut in a hole that is there already.
        if (tapped)
            for (shape::Hole& hole : built.region.holes)
                if (hole.part == shape::Part::Bore)
                    hole.part = shape::Part::Extra;
        m_plate = std::move(built.region);
        const shape::Box box = shape::bounds(m_plate.rim);
        m_plateSize = std::min(box.width(), box.height());
        return true;
    }

    placement::FitOptions fitOptions(bool thorough) {
        placement::FitOptions options;
        options.thorough = thorough;
        options.stop = [this] { return m_stopped.load(); };
        return options;
    }

    void layOn(std::size_t i, bool thorough) {
        const rack::Offcut& offcut = m_rack.rack.offcuts[i];
        m_all = m_answer.pieces.size();
        ++m_done;
        throwIfStopped(tell());
        placement::BuiltStock built = placement::buildStock(offcut);
        if (!built.problems.empty()) {
            const std::lock_guard lock(m_mutex);
            for (const util::Problem& problem : built.problems)
                m_answer.refused.push_back({offcut.row, offcut.name, problem.field, problem.message});
            return;
        }
        PieceAnswer& piece = m_answer.pieces[i];
        piece.row = offcut.row;
        piece.name = offcut.name;
        piece.where = offcut.where;
        piece.note = offcut.note;
        piece.owned = offcut.owned;
        piece.count = offcut.count;
        piece.thickness = rack::soundThickness(offcut);
        piece.stock = std::move(built.stock);
        piece.areaMm2 = placement::area(piece.stock);
        piece.spacing = placement::spacingFor(m_job, piece.thickness);
        piece.remarks = std::move(built.words);
        for (const rack::Remark& remark : m_rack.mended)
            if (remark.row == offcut.row)
                piece.remarks.push_back(remark.message);
        fit(piece, thorough);
    }

    /// Plates of a stack that must come from each piece of this kind.
    std::size_t wantedOf(const PieceAnswer& piece) const {
        const int stacked = std::max(1, m_job.plate.stacked.value_or(1));
        const int count = std::max(1, piece.count);
        return static_cast<std::size_t>((stacked + count - 1) / count);
    }

    void fit(PieceAnswer& piece, bool thorough) {
        const std::size_t wanted = wantedOf(piece);
        const placement::FitOptions options = fitOptions(thorough);
        const FitAnswer answer = placement::fitPlate(m_plate, piece.stock, piece.spacing, options);
        throwIfStopped(!answer.stopped);
        if (!answer.place) {
            piece.shortOf = shortOf(answer);
            return;
        }
        piece.place = answer.place;
        piece.fits = true;
        if (wanted < 2)
            return;
        const auto several = placement::fitSeveral(m_plate, piece.stock, piece.spacing, wanted, options);
        piece.fits = several.size() == wanted;
        if (several.empty())
            return;
        piece.place = several.front();
        piece.others.assign(several.begin() + 1, several.end());
        if (!piece.fits)
            piece.shortOf = say("%1 of the %2 plates of the stack come out of it", {several.size(), wanted});
    }

    std::string shortOf(const FitAnswer& answer) const {
        if (!answer.settled)
            return say("too tight to say; lay a paper template on it");
        const Length missing = Length::fromMm(std::max(answer.missing, 0.1));
        const std::string shown = units::show(missing, m_job.preferred);
        if (answer.missing > kNear * m_plateSize)
            return answer.shortOf == ShortOf::Size ? say("much too small")
                                                   : say("holes or bad areas take the room");
        switch (answer.shortOf) {
        case ShortOf::Holes:
            return say("fits but for its holes, by %1", {shown});
        case ShortOf::BadAreas:
            return say("fits but for its bad areas, by %1", {shown});
        default:
            return say("%1 too narrow", {shown});
        }
    }

    Sum sumOf(const job::Job& job) const {
        const Report report = check(job, m_check);
        Sum sum{report.grade, {}, report.plate.massKg, report.weakest, report.reason};
        if (const verdict::Check* weakest = report.find(report.weakest))
            sum.margin = weakest->marginOverWanted();
        return sum;
    }

    /// Checks of these jobs that are not known yet, in two threads.
    void learn(const std::map<Key, job::Job>& jobs) {
        std::vector<std::pair<Key, const job::Job*>> open;
        for (const auto& [key, job] : jobs)
            if (!m_known.contains(key))
                open.emplace_back(key, &job);
        std::vector<Sum> sums(open.size());
        m_all = open.size();
        m_done = 0;
        inParallel(open.size(), [&](std::size_t i) {
            sums[i] = sumOf(*open[i].second);
            ++m_done;
            throwIfStopped(tell());
        });
        for (std::size_t i = 0; i < open.size(); ++i)
            m_known.emplace(open[i].first, std::move(sums[i]));
    }

    const rack::Offcut& offcutOf(const PieceAnswer& piece) const {
        return *std::ranges::find(m_rack.rack.offcuts, piece.row, &rack::Offcut::row);
    }

    job::Job made(const PieceAnswer& piece) const {
        job::Job job = jobOnPiece(m_job, offcutOf(piece), piece.place ? &*piece.place : nullptr);
        if (m_grain > 0 && !m_exact.contains(piece.row))
            if (const double down = std::floor(piece.thickness.mm() / m_grain + 1e-9) * m_grain; down > 0)
                job.plate.thickness = Length::fromMm(down);
        return job;
    }

    /// What it would be if the guess at its steel is right.
    std::optional<job::Job> asGuessed(const PieceAnswer& piece) const {
        const rack::Offcut& offcut = offcutOf(piece);
        if (offcut.steelIs != rack::SteelIs::Guessed)
            return std::nullopt;
        job::Job job = made(piece);
        job.plate.steel = offcut.steel;
        return job;
    }

    std::map<Key, job::Job> jobsToCheck(std::size_t first) const {
        std::map<Key, job::Job> jobs;
        for (std::size_t i = 0; i < std::min(first, m_answer.pieces.size()); ++i) {
            const PieceAnswer& piece = m_answer.pieces[i];
            if (!piece.fits)
                continue;
            const job::Job job = made(piece);
            jobs.emplace(keyOf(job), job);
            if (const auto guessed = asGuessed(piece))
                jobs.emplace(keyOf(*guessed), *guessed);
        }
        return jobs;
    }

    void judgeAll() {
        for (PieceAnswer& piece : m_answer.pieces)
            if (piece.fits)
                judge(piece);
        sort();
    }

    /// Each in its own thickness and steel. Where there are very many of these, all are first taken as the
    /// next thinner round figure, which is the safe side, and the best of them then as they are.
    void checkAll() {
        std::map<Key, job::Job> jobs = jobsToCheck(m_answer.pieces.size());
        for (const double grain : kGrains) {
            if (jobs.size() <= kMostKeys)
                break;
            m_grain = grain;
            jobs = jobsToCheck(m_answer.pieces.size());
        }
        learn(jobs);
        judgeAll();
        for (int round = 0; m_grain > 0 && round < 2; ++round) {
            for (std::size_t i = 0; i < std::min(m_options.best, m_answer.pieces.size()); ++i)
                m_exact.insert(m_answer.pieces[i].row);
            learn(jobsToCheck(m_options.best));
            judgeAll();
        }
        for (PieceAnswer& piece : m_answer.pieces) {
            if (!piece.fits)
                continue;
            remark(piece);
            if (const Length taken = *made(piece).plate.thickness; taken < piece.thickness)
                piece.remarks.push_back(say("checked as %1", {units::show(taken, m_job.preferred)}));
        }
    }

    void judge(PieceAnswer& piece) {
        const job::Job job = made(piece);
        const Sum& sum = m_known.at(keyOf(job));
        piece.grade = sum.grade;
        piece.margin = sum.margin;
        piece.massKg = sum.massKg;
        piece.weakest = sum.weakest;
        piece.reason = sum.reason;
        piece.steel = job.plate.steel ? job.plate.steel->name : "";
        piece.cutMinutes = cutMinutes(piece.thickness);
        if (const auto guessed = asGuessed(piece)) {
            const Sum& other = m_known.at(keyOf(*guessed));
            if (rankOf(other.grade) > rankOf(piece.grade)) // a guess at something worse counts
                piece.grade = other.grade, piece.margin = other.margin, piece.reason = other.reason,
                piece.weakest = other.weakest;
        }
    }

    void remark(PieceAnswer& piece) const {
        if (const auto guessed = asGuessed(piece))
            piece.remarks.push_back(say("judged as unknown scrap; if it is %1 as guessed: %2",
                                        {guessed->plate.steel->name,
                                         say(verdict::wordOf(m_known.at(keyOf(*guessed)).grade).data())}));
        if (piece.place->bore)
            piece.remarks.push_back(
                say("its hole of %1 serves as the bore",
                    {units::show(Length::fromMm(piece.place->boreDiameter), m_job.preferred)}));
    }

    double cutMinutes(Length thickness) const {
        const job::Assumed assumed = job::assume(m_job);
        double along = shape::perimeter(m_plate.rim);
        int cuts = 1;
        const auto least = job::leastBurnedHole(assumed.process, thickness);
        for (const shape::Hole& hole : m_plate.holes) {
            const shape::Box box = shape::bounds(hole.loop);
            if (least && std::min(box.width(), box.height()) >= least->mm()) {
                along += shape::perimeter(hole.loop);
                ++cuts;
            }
        }
        if (!least) // sawn or milled; its holes are drilled whatever the piece
            return along * thickness.mm() / kSawed * assumed.stacked;
        const exchange::CutRates rates = exchange::usualRates(assumed.process, thickness);
        return (along / rates.feed + cuts * rates.pierceSeconds / 60) * assumed.stacked;
    }

    void improve(PieceAnswer& piece) {
        if (!piece.fits || m_stopped)
            return;
        const auto before = piece.place;
        const FitAnswer answer =
            wantedOf(piece) > 1 ? FitAnswer{}
                                : placement::fitPlate(m_plate, piece.stock, piece.spacing, fitOptions(true));
        throwIfStopped(tell());
        // Another bore would be another verdict.
        if (answer.place && answer.place->bore == before->bore)
            piece.place = answer.place;
    }

    void tryFewerAtATime() {
        const int count = static_cast<int>(m_job.stations.at.empty() ? m_job.stations.count.value_or(0) : 0);
        if (m_job.work == job::Work::Pull || count < 4 || !m_job.stations.loaded.empty() ||
            !m_job.load.share.empty())
            return;
        std::vector<int>
            steps; // so many parts of the ring, one after the other; each balanced about the bore
        for (int parts = 2; parts <= count / 2; ++parts)
            if (count % parts == 0)
                steps.push_back(parts);
        std::map<Key, std::string> found;
        std::size_t tried = 0;
        for (PieceAnswer& piece : m_answer.pieces) {
            if (!piece.fits || piece.grade == Grade::Holds || piece.grade == Grade::Incomplete)
                continue;
            const job::Job whole = made(piece);
            const Key key =
                keyOf(whole); // a guess may have made the grade worse; that is rare, and on the safe side
            if (!found.contains(key)) {
                if (tried == kMostHalved)
                    continue;
                ++tried;
                std::string words;
                for (const int parts : steps) {
                    throwIfStopped(tell());
                    const Sum sum = sumOf(fewerAtATime(whole, count, parts));
                    if (!mayBeMade(sum.grade) || rankOf(sum.grade) >= rankOf(piece.grade))
                        continue;
                    const int atATime = count / parts;
                    words = sum.grade == Grade::Holds
                                ? say("holds if %1 stations at a time", {atATime})
                                : say("thin, but goes, if %1 stations at a time", {atATime});
                    break;
                }
                found.emplace(key, words);
            }
            piece.shortOf = found.at(key);
        }
    }

    bool isUsable(const PieceAnswer& piece) const { return piece.fits && mayBeMade(piece.grade); }

    int groupOf(const PieceAnswer& piece) const {
        return (isUsable(piece) ? 0 : piece.fits ? 2 : 4) + (piece.owned ? 0 : 1);
    }

    /// Less is better.
    double preferenceOf(const PieceAnswer& piece) const {
        switch (m_options.prefer) {
        case Prefer::Lightest:
            return piece.massKg.value_or(1e9);
        case Prefer::LeastWaste:
            return piece.place ? piece.place->waste : piece.areaMm2;
        case Prefer::ThickestMargin:
            return -piece.margin.value_or(0);
        case Prefer::QuickestCut:
            return piece.cutMinutes.value_or(1e9);
        }
        return 0;
    }

    void sort() {
        std::ranges::stable_sort(m_answer.pieces, [&](const PieceAnswer& a, const PieceAnswer& b) {
            if (groupOf(a) != groupOf(b))
                return groupOf(a) < groupOf(b);
            if (rankOf(a.grade) != rankOf(b.grade))
                return rankOf(a.grade) < rankOf(b.grade);
            if (a.fits && b.fits && std::abs(preferenceOf(a) - preferenceOf(b)) > 1e-9)
                return preferenceOf(a) < preferenceOf(b);
            if (!a.fits && !b.fits && a.areaMm2 != b.areaMm2)
                return a.areaMm2 > b.areaMm2;
            return a.row < b.row;
        });
    }

    const job::Job& m_job;
    const rack::RackReading& m_rack;
    const RackOptions& m_options;
    CheckOptions m_check;
    shape::Region m_plate;
    double m_plateSize = 0;
    std::map<Key, Sum> m_known;
    double m_grain = 0;            ///< mm that thicknesses are rounded down to; 0: taken as they are
    std::set<std::size_t> m_exact; ///< rows taken as they are all the same
    RackAnswer m_answer;
    std::mutex m_mutex;
    std::atomic<bool> m_stopped{false};
    std::atomic<std::size_t> m_done{0}, m_all{1};
    double m_from = 0, m_to = 1;
    const char* m_what = "";
};

} // namespace

std::string_view wordOf(Prefer prefer) {
    switch (prefer) {
    case Prefer::LeastWaste:
        return "least-waste";
    case Prefer::Lightest:
        return "lightest";
    case Prefer::ThickestMargin:
        return "thickest-margin";
    case Prefer::QuickestCut:
        return "quickest-cut";
    }
    return {};
}

Found<Prefer> preferFrom(std::string_view word) {
    for (const Prefer prefer :
         {Prefer::LeastWaste, Prefer::Lightest, Prefer::ThickestMargin, Prefer::QuickestCut})
        if (wordOf(prefer) == word)
            return prefer;
    return std::nullopt;
}

RackAnswer rankRack(const job::Job& job, const rack::RackReading& rack, const RackOptions& options) {
    return Ranking(job, rack, options).run();
}

} // namespace pw::engine
