#include "app/gui/models/spring_words.h"

#include "app/gui/models/job_rows.h"
#include "app/gui/models/sentence.h"
#include "core/spring/resolve.h"

#include <algorithm>
#include <QCoreApplication>

namespace pw::gui {

namespace {

class Words {
    Q_DECLARE_TR_FUNCTIONS(pw::gui::SpringWords)

public:
    const jobfile::Tree& tree;
    const jobfile::Reading& reading;
    std::size_t index;
    units::System system;

    const job::Spring& spring() const { return reading.job.springs[index]; }
    template<class Q>
    QString shown(const Q& figure) const {
        return local(units::show(figure, system));
    }

    void comesTo(const spring::Resolved& found, QStringList& lines) const {
        if (!found.known)
            return;
        if (found.rateAssumed)
            lines << tr("It rises by about %1, a guess. A second reading at another length settles it.")
                         .arg(shown(found.steep));
        else
            lines << tr("It rises by %1.").arg(shown(found.steep));
        lines << tr("Built in, at %1, it pushes with %2.")
                     .arg(shown(found.assembled), shown(found.forceAt(found.assembled)));
        const auto& travel = reading.job.travel;
        const units::Length none = units::Length::fromMm(0);
        const units::Length squeeze = travel.compressFurther.value_or(none) + travel.swell.value_or(none);
        if (squeeze > none && squeeze < found.assembled)
            lines << tr("Squeezed %1 further it pushes with %2.")
                         .arg(shown(squeeze), shown(found.forceAt(found.assembled - squeeze)));
    }

    /// Pairs of which the shorter does not push harder.
    void swapped(QStringList& lines) const {
        const std::string list = "springs[" + std::to_string(index) + "].loads";
        const auto rows = understoodRows(tree, reading.problems, list, {"length", "force"});
        const auto& loads = spring().loads;
        for (std::size_t j = 0; j < loads.size() && j < rows.size(); ++j)
            for (std::size_t i = 0; i < j; ++i) {
                const std::size_t shorter = loads[i].length < loads[j].length ? i : j,
                                  longer = i + j - shorter;
                if (loads[i].length == loads[j].length) {
                    if (loads[i].force.high < loads[j].force.low || loads[j].force.high < loads[i].force.low)
                        lines << tr("Readings %1 and %2 are at one length and differ. Check both.")
                                     .arg(rows[i] + 1)
                                     .arg(rows[j] + 1);
                } else if (loads[shorter].force.high <= loads[longer].force.low) {
                    lines << tr("Readings %1 and %2 cannot both be right: shorter, it must push harder. Are "
                                "the "
                                "lengths changed round?")
                                 .arg(rows[i] + 1)
                                 .arg(rows[j] + 1);
                }
            }
    }
};

} // namespace

QStringList springWords(const jobfile::Tree& tree, const jobfile::Reading& reading, std::size_t index,
                        units::System system) {
    if (index >= reading.job.springs.size())
        return {};
    const Words words{tree, reading, index, system};
    QStringList lines;
    words.swapped(lines);
    if (!lines.isEmpty())
        return lines;
    const spring::Resolved found = spring::resolve(words.spring(), static_cast<int>(index), system);
    words.comesTo(found, lines);
    for (const auto& problem : found.problems)
        lines << asSentence(problem.message);
    return lines;
}

} // namespace pw::gui
