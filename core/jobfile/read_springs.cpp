#include "core/jobfile/sections.h"

#include "core/util/say.h"

#include <utility>

namespace pw::jobfile {

namespace {

constexpr std::size_t kMostLoads = 50;

constexpr Word<std::string_view> kEnds[] = {{"closed ground", "closed ground"},
                                            {"closed", "closed"},
                                            {"plain ground", "plain ground"},
                                            {"plain", "plain"}};

bool readReading(FieldReader& figures, job::SpringReading& reading) {
    const bool length = figures.need("length", reading.length, kSize);
    const bool force = figures.need("force", reading.force, kForce);
    return length && force;
}

/// The figure under `lowKey` must be less than the one under `highKey`.
void mustBeLess(FieldReader& figures, std::string_view lowKey, const job::Given<units::Length>& low,
                std::string_view highKey, const job::Given<units::Length>& high) {
    if (low && high && *low >= *high)
        figures.problem(lowKey, say("must be less than \"%1\"; are the two swapped?", {highKey}));
}

/// A spring pushes harder the shorter it is; readings that say otherwise hold a slip.
void forceMustRiseAsItShortens(FieldReader& figures, const std::vector<job::SpringReading>& readings) {
    for (std::size_t i = 0; i < readings.size(); ++i)
        for (std::size_t j = 0; j < i; ++j) {
            const auto &a = readings[i], &b = readings[j];
            const auto& shorter = a.length < b.length ? a : b;
            const auto& longer = a.length < b.length ? b : a;
            if (shorter.length < longer.length && shorter.force.high <= longer.force.low)
                return figures.problem(
                    "loads",
                    say("the longer spring pushes harder than the shorter one; check the two readings"));
        }
}

} // namespace

bool readSpring(FieldReader& figures, job::Spring& spring) {
    figures.text("name", spring.name);
    figures.whole("per_station", spring.perStation, 1, 20);
    figures.quantity("assembled_length", spring.assembledLength, kSize);
    figures.rows("loads", spring.loads, kMostLoads, readReading);
    figures.quantity("rate", spring.rate, kRate);
    figures.quantity("free_length", spring.freeLength, kSize);
    figures.quantity("solid_length", spring.solidLength, kSize);
    figures.quantity("wire", spring.wire, kSize);
    figures.quantity("coil_outside", spring.coilOutside, kSize);
    figures.number("active_coils", spring.activeCoils, 0.5, 1000);
    figures.number("total_coils", spring.totalCoils, 0.5, 1000);
    std::string_view ends;
    figures.choice("ends", ends, kEnds);
    spring.ends = ends;
    figures.quantity("G", spring.shearModulus, kModulus);
    std::string wireMaterial;
    figures.text("wire_material", wireMaterial);
    if (!wireMaterial.empty())
        spring.wireMaterial = std::move(wireMaterial);

    mustBeLess(figures, "solid_length", spring.solidLength, "free_length", spring.freeLength);
    mustBeLess(figures, "assembled_length", spring.assembledLength, "free_length", spring.freeLength);
    if (spring.wire && spring.coilOutside && *spring.wire * 2 >= *spring.coilOutside)
        figures.problem("wire",
                        say("twice the wire is more than \"coil_outside\"; no such coil can be wound"));
    if (spring.activeCoils && spring.totalCoils && *spring.activeCoils > *spring.totalCoils)
        figures.problem("active_coils", say("must be no more than \"total_coils\"; are the two swapped?"));
    forceMustRiseAsItShortens(figures, spring.loads);
    return true;
}

void readTravel(FieldReader& figures, job::Travel& travel) {
    figures.quantity("compress_further", travel.compressFurther, kSizeOrZero);
    figures.quantity("swell", travel.swell, kSizeOrZero);
}

} // namespace pw::jobfile
