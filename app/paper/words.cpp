#include "app/paper/words.h"

#include "app/engine/gauge.h"
#include "core/util/say.h"
#include "geometry/exchange/signs.h"

#include <cmath>

namespace pw::paper {

QString gradeWord(verdict::Grade grade) {
    return toQt(say(verdict::wordOf(grade).data()));
}

QString steelWord(const std::string& name) {
    const std::string clean = exchange::cleanText(name, 120);
    return clean == "unknown scrap" ? Paper::tr("unknown scrap") : toQt(clean);
}

std::string bare(units::Length length, units::System system) {
    const std::string text = units::plainBlanks(asMarked(length, system));
    return text.substr(0, text.rfind(' '));
}

std::string asLaidOut(units::Length length, units::System system) {
    if (system == units::System::Inch)
        return bare(length, system);
    const double tenths = std::round(length.mm() * 10);
    const auto whole = static_cast<long long>(std::abs(tenths));
    return (tenths < 0 ? "-" : "") + std::to_string(whole / 10) + tongue().decimalMark +
           std::to_string(whole % 10);
}

std::string onDial(units::Length reading, units::System system) {
    return engine::dialWords(reading, system);
}

} // namespace pw::paper
