#include "app/gui/models/pin_words.h"

#include "app/gui/models/field_text.h"
#include "app/gui/models/job_rows.h"
#include "core/job/assumed.h"
#include "core/job/station_places.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <QCoreApplication>

namespace pw::gui {

using stations::PinFigure;
using stations::PinFreedom;
using stations::PinLayout;

namespace {

class Words {
    Q_DECLARE_TR_FUNCTIONS(pw::gui::PinWords)

public:
    const PinLayout& layout;
    units::System system;

    QString length(double mm) const { return local(units::show(units::Length::fromMm(mm), system)); }

    static QString nameOf(const PinFigure& figure) {
        return figure.over ? tr("%1 to %2, over").arg(figure.first).arg(figure.second)
                           : tr("%1 to %2, between").arg(figure.first).arg(figure.second);
    }

    QString circle() const {
        if (layout.freedom == PinFreedom::EvenCircle)
            return tr("Pin circle %1, if the pins divide it evenly. Readings over all neighbours tell "
                      "whether they do.")
                .arg(length(layout.evenCircle.mm()));
        std::size_t worst = 0;
        for (std::size_t i = 0; i < layout.fromEven.size(); ++i)
            if (layout.fromEven[i] > layout.fromEven[worst])
                worst = i;
        return tr("Pin circle %1. Pin %2 is furthest from an even division: %3.")
            .arg(length(layout.circle.mm()))
            .arg(worst + 1)
            .arg(length(layout.fromEven[worst].mm()));
    }

    QString fromEven() const {
        if (layout.freedom == PinFreedom::EvenCircle)
            return {};
        QStringList pins;
        for (std::size_t i = 0; i < layout.fromEven.size(); ++i)
            pins << tr("%1: %2", "pin, how far").arg(i + 1).arg(shortLength(layout.fromEven[i].mm(), system));
        return tr("From even, each pin: %1.").arg(pins.join(QStringLiteral("; ")));
    }

    QString agreement() const {
        if (layout.doubtful.size() == 1) {
            const PinFigure& figure = layout.figures[layout.doubtful.front()];
            if (layout.doubtfulIsOtherWay)
                return figure.over
                           ? tr("The reading %1 fits if it was taken between the pins. It is left out.")
                                 .arg(nameOf(figure))
                           : tr("The reading %1 fits if it was taken over the pins. It is left out.")
                                 .arg(nameOf(figure));
            return tr("The reading %1 does not agree, by %2. The others ask for %3. It is left out.")
                .arg(nameOf(figure), length(std::abs(layout.doubtfulByMm)), length(figure.fitted.mm()));
        }
        if (!layout.doubtful.empty()) {
            QStringList names;
            for (const std::size_t k : layout.doubtful)
                names << nameOf(layout.figures[k]);
            return tr("One reading is wrong: %1. Read one more pair to tell which.")
                .arg(names.join(QStringLiteral("; ")));
        }
        if (layout.disagree)
            return tr(
                "The readings do not agree, and no single one is to blame. Are the pins numbered in order? "
                "Read them again.");
        if (layout.spare <= 0)
            return tr("No reading is to spare, so a slip does not show. Read more pairs.");
        return tr("The readings agree, to %1 each.").arg(length(std::max(layout.scatterMm, 0.01)));
    }

    QString freedom() const {
        if (layout.freedom == PinFreedom::OnCircle)
            return tr(
                "The pins are taken to lie on one circle. Every second pair read as well gives each its own "
                "place.");
        return {};
    }
};

} // namespace

int pinCountOf(const job::Job& job) {
    int most = 0;
    for (const auto& reading : job.stations.readings)
        most = std::max({most, reading.first, reading.second});
    if (!job.stations.at.empty())
        return static_cast<int>(job.stations.at.size());
    return job.stations.count.value_or(most);
}

util::Result<PinLayout> pinLayoutOf(const job::Job& job) {
    struct Question {
        std::vector<job::PinReading> readings;
        int count = 0;
        std::optional<units::Length> pin;
        bool operator==(const Question&) const = default;
    };
    static thread_local Question last;
    static thread_local std::optional<util::Result<PinLayout>> answer;
    Question question{job.stations.readings, pinCountOf(job), job.stations.pin};
    if (!answer || !(question == last)) {
        answer = stations::findPinLayout(question.readings, question.count, question.pin);
        last = std::move(question);
    }
    return *answer;
}

QStringList pinWords(const PinLayout& layout, const job::Job& job, units::System system) {
    const Words words{layout, system};
    QStringList lines{words.agreement(), words.circle(), words.fromEven(), words.freedom()};
    if (layout.pinWorkedOut)
        lines << Words::tr("One pin is %1 across, worked out from both kinds of readings.")
                     .arg(words.length(layout.pin.mm()));
    if (layout.freedom != PinFreedom::EvenCircle && !layout.disagree && layout.doubtful.size() < 2)
        lines << (isEvenEnough(layout, job)
                      ? Words::tr("That is no more than the cutting may be off: one even circle serves.")
                      : Words::tr("That is more than the cutting may be off: give each pin its own place."));
    lines.removeAll(QString());
    return lines;
}

QString pinRemark(const PinLayout& layout, const job::PinReading& reading, bool over, units::System system) {
    for (const std::size_t k : layout.doubtful) {
        const PinFigure& figure = layout.figures[k];
        if (figure.first != reading.first || figure.second != reading.second || figure.over != over)
            continue;
        if (layout.doubtful.size() > 1)
            return Words::tr("This may be the one that does not agree.");
        return Words::tr("Does not agree, by %1. The others ask for %2.")
            .arg(local(units::show(units::Length::fromMm(std::abs(layout.doubtfulByMm)), system)),
                 local(units::show(figure.fitted, system)));
    }
    return {};
}

bool isEvenEnough(const PinLayout& layout, const job::Job& job) {
    return layout.freedom == PinFreedom::EvenCircle ||
           layout.worstFromEven() <= job::assume(job).habits.layoutError;
}

namespace {

double startOf(const job::Job& job) {
    if (job.stations.start)
        return job.stations.start->radian();
    const auto places = job::stationCentres(job.stations);
    return places.empty() ? 0 : std::atan2(places[0].y, places[0].x);
}

} // namespace

void takeEvenCircle(jobfile::Tree& tree, const PinLayout& layout, const job::Job& job, units::System system) {
    placeOnCircle(tree, layout.pins.size(), layout.evenCircle.mm(), startOf(job) * 180 / std::numbers::pi,
                  system);
}

void takePinPlaces(jobfile::Tree& tree, const PinLayout& layout, const job::Job& job, units::System system) {
    std::vector<shape::Point> places;
    for (const auto& pin : layout.pins)
        places.push_back(shape::rotated(pin, startOf(job)));
    placeAt(tree, places, system);
}

} // namespace pw::gui
