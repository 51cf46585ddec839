#include "core/hub/heat.h"

#include "core/material/hot.h"
#include "core/util/csv.h"
#include "core/util/embedded.h"
#include "core/util/require.h"
#include "core/util/say.h"

#include <algorithm>

// Inside: mm, degrees C, K.
namespace pw::hub {

namespace {

Temperature roomAnd(double kelvin) {
    return kRoom + Temperature::fromCelsius(kelvin);
}

bool isMetal(const std::string& name) {
    using material::Metal;
    for (const Metal metal : {Metal::Steel, Metal::Stainless, Metal::GreyIron, Metal::DuctileIron,
                              Metal::Aluminium, Metal::CopperAlloy})
        if (name == material::nameOf(metal))
            return true;
    return false;
}

/// "{200}" as "200 C" or "392 F".
std::string writtenOut(std::string text, units::System system) {
    for (auto open = text.find('{'); open != std::string::npos; open = text.find('{')) {
        const auto close = text.find('}', open);
        util::require(close != std::string::npos, "heat_effects.csv: a brace is left open in: " + text);
        const double celsius = std::stod(text.substr(open + 1, close - open - 1));
        text.replace(open, close - open + 1, units::show(Temperature::fromCelsius(celsius), system));
    }
    return text;
}

} // namespace

double kelvinToOpen(Length interference, Length clearance, Length shaft, double hubExpansion) {
    return (interference + clearance) / shaft / hubExpansion;
}

Temperature temperatureToOpen(Length interference, Length clearance, Length shaft, double hubExpansion) {
    return roomAnd(kelvinToOpen(interference, clearance, shaft, hubExpansion));
}

std::optional<Temperature> temperatureToOpenTogether(Length interference, Length clearance, Length shaft,
                                                     double hubExpansion, double shaftExpansion) {
    if (hubExpansion <= shaftExpansion)
        return std::nullopt;
    return roomAnd(kelvinToOpen(interference, clearance, shaft, hubExpansion - shaftExpansion));
}

Length interferenceAt(Length atRoom, Length shaft, double hubExpansion, Temperature hub,
                      double shaftExpansion, Temperature shaftTemperature) {
    const double strain =
        hubExpansion * (hub - kRoom).celsius() - shaftExpansion * (shaftTemperature - kRoom).celsius();
    return atRoom - shaft * strain;
}

const std::vector<HeatEffect>& heatEffects() {
    static const std::vector<HeatEffect> kEffects = [] {
        std::vector<HeatEffect> effects;
        for (const util::CsvRow& row : util::readCsv(util::embedded("heat_effects.csv")))
            effects.push_back({row.text("on"), Temperature::fromCelsius(row.number("celsius")),
                               say(row.text("says").c_str()), say(row.text("source").c_str())});
        return effects;
    }();
    return kEffects;
}

std::vector<HeatEffect> heatAdvice(Temperature reached, material::Metal metal, units::System system) {
    std::vector<HeatEffect> advice;
    for (const HeatEffect& effect : heatEffects())
        if (effect.from <= reached && (!isMetal(effect.on) || effect.on == material::nameOf(metal)))
            advice.push_back(effect);
    for (HeatEffect& effect : advice)
        effect.says = writtenOut(std::move(effect.says), system);
    std::ranges::stable_sort(advice, {}, &HeatEffect::from);
    return advice;
}

} // namespace pw::hub
