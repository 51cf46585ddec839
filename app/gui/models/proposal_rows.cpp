#include "app/gui/models/proposal_rows.h"

#include "app/gui/models/field_text.h"
#include "app/gui/models/rack_rows.h"
#include "app/gui/models/sentence.h"
#include "app/gui/widgets/verdict_head.h"

#include <algorithm>
#include <cmath>
#include <QCoreApplication>

namespace pw::gui {

namespace {

class Words {
    Q_DECLARE_TR_FUNCTIONS(pw::gui::ProposalRows)
};

QString figureWords(const engine::Proposal& proposal, units::System system) {
    QStringList words{
        Words::tr("%1 plate", "thickness as it is stocked").arg(local(proposal.thicknessLabel))};
    if (proposal.massKg)
        words << local(units::show(units::Mass::fromKg(*proposal.massKg), system));
    if (proposal.deflectionMm) {
        const double shown = std::round(*proposal.deflectionMm * 100) / 100; // what a dial shows
        words << Words::tr("bends %1").arg(local(units::show(units::Length::fromMm(shown), system)));
    }
    return words.join(QStringLiteral(", "));
}

} // namespace

std::vector<ProposalRow> proposalRows(const engine::Proposals& proposals, units::System system) {
    std::vector<ProposalRow> rows;
    for (const engine::Proposal& proposal : proposals.best)
        rows.push_back(
            {.title = local(proposal.title),
             .figures = figureWords(proposal, system),
             .tradeOff = local(proposal.tradeOff),
             .reason = proposal.grade == verdict::Grade::Holds ? QString() : asSentence(proposal.reason),
             .grade = proposal.grade,
             .margin = proposal.margin,
             .region = proposal.region});
    return rows;
}

QStringList proposalRules(const engine::Proposals& proposals) {
    QStringList rules;
    for (const std::string& rule : proposals.rules)
        rules << asSentence(rule);
    return rules;
}

QString spokenProposal(const ProposalRow& row) {
    QStringList words{row.title, verdictWord(row.grade)};
    if (row.margin)
        words << Words::tr("%1 what is wanted").arg(timesWanted(*row.margin));
    for (const QString& part : {row.figures, row.reason, row.tradeOff})
        if (!part.isEmpty())
            words << part;
    return words.join(QStringLiteral(", "));
}

double proposalScale(const std::vector<ProposalRow>& rows, double width, double height) {
    double scale = 0;
    for (const ProposalRow& row : rows) {
        if (!row.region || row.region->rim.size() < 2)
            continue;
        const shape::Box box = shape::bounds(row.region->rim);
        const double fits =
            std::min(width / std::max(box.width(), 1.0), height / std::max(box.height(), 1.0));
        scale = scale > 0 ? std::min(scale, fits) : fits;
    }
    return scale > 0 ? scale : 1;
}

} // namespace pw::gui
