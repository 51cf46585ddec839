#include "app/gui/models/sentences.h"

#include "app/engine/report.h"
#include "app/gui/models/field_text.h"
#include "app/gui/models/fields.h"

#include <algorithm>
#include <cmath>
#include <QCoreApplication>
#include <QStringList>

namespace pw::gui {

namespace {

class Words {
    Q_DECLARE_TR_FUNCTIONS(pw::gui::Sentences)

public:
    const jobfile::Tree& tree;
    const job::Job& job;
    const engine::Report* report;
    units::System system;

    QString length(const job::Given<units::Length>& value) const {
        if (!value)
            return QStringLiteral("?");
        if (system == units::System::Inch) {
            QString text = QString::fromStdString(units::inchFraction(*value));
            return text.replace(QStringLiteral("\u00a0in"), QStringLiteral("″"));
        }
        return local(units::number(std::round(value->mm() * 100) / 100, 6));
    }
    QString lengthUnit(const job::Given<units::Length>& value) const {
        return system == units::System::Inch ? length(value) : length(value) + QStringLiteral("\u00a0mm");
    }

    QString choiceWords(const std::string& group, const std::string& path) const {
        const std::string value = textAt(tree, path);
        for (const auto& g : fieldGroups(tree)) {
            if (g.id != group)
                continue;
            for (const auto& field : g.fields)
                if (field.path == path)
                    for (const auto& [key, words] : field.choices)
                        if (key.toStdString() == value)
                            return words;
        }
        return QString::fromStdString(value);
    }

    QString squeezed() const {
        if (job.work == job::Work::Pull)
            return tr("Something is pulled off");
        const bool bar = job.plate.outline && job.plate.outline->shape == job::OutlineShape::Bar;
        const QString what = job.stations.at.empty() && !bar ? tr("Springs in a ring") : tr("Springs");
        if (job.travel.compressFurther && job.travel.compressFurther->mm() > 0)
            return tr("%1, %2 further").arg(what, lengthUnit(job.travel.compressFurther));
        return what;
    }

    QString stations() const {
        const auto& s = job.stations;
        QStringList parts;
        if (!s.at.empty())
            parts << tr("%1, each placed by itself").arg(s.at.size());
        else if (s.count || s.circle)
            parts << tr("%1 on Ø%2")
                         .arg(s.count ? QString::number(*s.count) : QStringLiteral("?"), length(s.circle));
        else
            return tr("How many, and on which circle?");
        parts << (job.work == job::Work::Pull ? tr("bolt holes %1") : tr("access holes %1"))
                     .arg(length(s.accessHole));
        if (const auto idle = std::ranges::count(s.loaded, false); idle > 0)
            parts << tr("%1 of them carry").arg(std::ssize(s.loaded) - idle);
        return parts.join(QStringLiteral(", "));
    }

    QString holes() const {
        const auto holes = job.plate.holes.size(), clear = job.keepClear.size();
        if (holes == 0 && clear == 0)
            return tr("No other holes, nothing in the way");
        if (clear == 0)
            return tr("Other holes: %1").arg(holes);
        if (holes == 0)
            return tr("In the way: %1").arg(clear);
        return tr("Other holes: %1, in the way: %2").arg(holes).arg(clear);
    }

    QString hub() const {
        if (!job.hub || (!job.hub->shaft && !job.hub->force && !job.hub->interference))
            return tr("Nobody knows how tight");
        QStringList parts;
        parts << choiceWords("hub", "hub.fit");
        if (textAt(tree, "hub.fit").empty())
            parts.last() = tr("A straight shaft, pressed");
        if (job.hub->shaft)
            parts << tr("Ø%1").arg(length(job.hub->shaft));
        if (report && report->hub.pull)
            parts << tr("asks for %1").arg(local(units::show(*report->hub.pull, system)));
        return parts.join(QStringLiteral(", "));
    }

    QString grip() const {
        QStringList parts;
        if (job.hub && job.hub->bolts)
            parts << tr("%1 bolts %2")
                         .arg(job.hub->bolts->count ? QString::number(*job.hub->bolts->count)
                                                    : QStringLiteral("?"),
                              QString::fromStdString(job.hub->bolts->thread));
        if (job.hub && job.hub->jaws)
            parts << tr("%1 jaws").arg(job.hub->jaws->count ? QString::number(*job.hub->jaws->count)
                                                            : QStringLiteral("?"));
        if (job.legs)
            parts << tr("%1 legs %2")
                         .arg(job.legs->count ? QString::number(*job.legs->count) : QStringLiteral("?"),
                              QString::fromStdString(job.legs->thread));
        return parts.isEmpty() ? tr("Bolts, jaws or legs?") : parts.join(QStringLiteral(", "));
    }

    QString ram() const {
        if (!job.ram)
            return tr("No ram");
        QStringList parts;
        if (job.ram->capacity)
            parts << local(units::show(*job.ram->capacity, system));
        if (!job.ram->rod.empty())
            parts << tr("rod %1").arg(QString::fromStdString(job.ram->rod));
        return parts.isEmpty() ? tr("Ram, not all given yet") : parts.join(QStringLiteral(", "));
    }

    QString heat() const {
        QStringList parts;
        if (job.heat.part)
            parts << tr("part %1").arg(local(units::show(*job.heat.part, system)));
        if (job.heat.tool)
            parts << tr("tool %1").arg(local(units::show(*job.heat.tool, system)));
        return parts.isEmpty() ? tr("All cold") : parts.join(QStringLiteral(", "));
    }

    QString load() const {
        if (job.work == job::Work::Pull && !job.load.total) {
            if (!report || !report->load.total)
                return tr("Wrench, ram or fit decide");
            const QString total = local(units::show(report->load.total->high, system));
            const std::string& source = report->load.source;
            if (source == "hub")
                return tr("%1, what the fit may ask").arg(total);
            if (source == "wrench")
                return tr("%1, what the wrench can make").arg(total);
            if (source == "ram")
                return tr("%1, what the ram can make").arg(total);
            return tr("Nobody states it: %1 is what the tool may do").arg(total);
        }
        if (job.load.total)
            return tr("%1, given").arg(local(units::show(*job.load.total, system)));
        if (report && report->load.total) {
            const QString total = local(units::show(*report->load.total, system));
            return report->load.source == "springs" ? tr("%1, from the springs").arg(total) : total;
        }
        if (job.springs.empty())
            return tr("No springs and no load yet");
        return tr("Springs, not all measured yet");
    }

    QString steel() const {
        QStringList parts;
        const auto& p = job.plate;
        parts << (p.thickness ? lengthUnit(p.thickness) : tr("Thickness needed"));
        parts << (p.steel ? p.steel->name == "unknown scrap" ? tr("unknown scrap")
                                                             : QString::fromStdString(p.steel->name)
                          : tr("unknown scrap"));
        if (p.outline) {
            const auto& o = *p.outline;
            switch (o.shape) {
            case job::OutlineShape::Disc:
                parts << (o.diameter ? tr("disc Ø%1").arg(length(o.diameter)) : tr("disc"));
                break;
            case job::OutlineShape::Bar:
                parts << tr("bar %1 × %2").arg(length(o.length), length(o.width));
                break;
            case job::OutlineShape::Rectangle:
                parts << tr("%1 × %2").arg(length(o.length), length(o.width));
                break;
            case job::OutlineShape::Polygon:
                parts << tr("polygon, %1 corners").arg(o.points.size());
                break;
            }
        }
        return parts.join(QStringLiteral(", "));
    }

    QString piece() const {
        if (!job.piece || job.piece->name.empty())
            return job.rack.empty() ? tr("No piece chosen")
                                    : tr("No piece chosen from %1").arg(QString::fromStdString(job.rack));
        const QString name = QString::fromStdString(job.piece->name);
        if (!job.piece->at)
            return name;
        const QString x = length(job.piece->at->x), y = length(job.piece->at->y);
        if (!job.piece->turn || job.piece->turn->degree() == 0)
            return tr("%1, middle at %2, %3").arg(name, x, y);
        return tr("%1, middle at %2, %3, turned %4°")
            .arg(name, x, y, local(units::number(job.piece->turn->degree(), 4)));
    }

    QString centre() const {
        QStringList parts;
        if (job.screw && !job.screw->thread.empty())
            parts << (QString::fromStdString(job.screw->thread) + QLatin1Char(' ') +
                      QString::fromStdString(job.screw->grade))
                         .trimmed();
        else
            parts << tr("No screw yet");
        if (job.screw && job.screw->lubrication)
            parts << choiceWords("centre", "screw.lubrication");
        if (job.screw && job.screw->washerOutside)
            parts << tr("washer %1").arg(length(job.screw->washerOutside));
        if (job.plate.bore)
            parts << tr("bore %1").arg(length(job.plate.bore));
        return parts.join(QStringLiteral(", "));
    }

    QString back() const {
        if (!job.back)
            return tr("The shaft itself");
        const auto& b = *job.back;
        if (b.kind == job::BackKind::Bar || b.kind == job::BackKind::Block)
            return tr("%1 %2 × %3, %4 apart")
                .arg(b.kind == job::BackKind::Bar ? tr("Bar") : tr("Block"), length(b.width),
                     length(b.thickness), length(b.span));
        if (b.kind == job::BackKind::StopBolt)
            return tr("Stop bolt %1").arg(QString::fromStdString(b.thread));
        return choiceWords("back", "back.kind");
    }

    QString cutting() const {
        if (!job.cutting.process)
            return tr("Not said how");
        QString words = choiceWords("cutting", "cutting.process");
        if (job.cutting.layoutError)
            words = tr("%1, holes ±\u00a0%2").arg(words, length(job.cutting.layoutError));
        return words;
    }

    QString wanted() const {
        const double margin = job.wanted.margin.value_or(2.0);
        const QString figure = local(units::number(margin));
        if (job.wanted.stamp)
            return tr("%1, stamped %2").arg(figure, local(units::show(*job.wanted.stamp, system)));
        if (job.wanted.setLimit)
            return tr("%1, and %2 of set").arg(figure, lengthUnit(job.wanted.setLimit));
        return tr("%1, and no set to see").arg(figure);
    }
};

} // namespace

QString groupSentence(const std::string& group, const jobfile::Tree& tree, const job::Job& job,
                      const engine::Report* report, units::System system) {
    const Words words{tree, job, report, system};
    if (group == "squeezed")
        return words.squeezed();
    if (group == "stations")
        return words.stations();
    if (group == "load")
        return words.load();
    if (group == "hub")
        return words.hub();
    if (group == "grip")
        return words.grip();
    if (group == "ram")
        return words.ram();
    if (group == "heat")
        return words.heat();
    if (group == "steel")
        return words.steel();
    if (group == "piece")
        return words.piece();
    if (group == "holes")
        return words.holes();
    if (group == "centre")
        return words.centre();
    if (group == "back")
        return words.back();
    if (group == "cutting")
        return words.cutting();
    if (group == "wanted")
        return words.wanted();
    return {};
}

} // namespace pw::gui
