#pragma once

#include "app/engine/propose.h"

#include <memory>
#include <QString>
#include <QStringList>
#include <vector>

/// Proposed plates as the lines of a list, as plain data.
namespace pw::gui {

struct ProposalRow {
    QString title;    ///< "Full ring, 160 mm across, 12 mm thick"
    QString figures;  ///< "12 mm plate, 1.62 kg, bends 0.08 mm"
    QString tradeOff; ///< what speaks for it and against it
    QString reason;   ///< of a verdict that does not hold; else empty
    verdict::Grade grade = verdict::Grade::Incomplete;
    std::optional<double> margin; ///< over what is wanted
    std::shared_ptr<const shape::Region> region;
};

std::vector<ProposalRow> proposalRows(const engine::Proposals& proposals, units::System system);

/// How the sizes were found, and where each rule is from.
QStringList proposalRules(const engine::Proposals& proposals);

/// One line for those who cannot see the row: all of it in words.
QString spokenProposal(const ProposalRow& row);

/// The one scale of all pictures, px per mm: the largest plate just fits into a picture of this size.
double proposalScale(const std::vector<ProposalRow>& rows, double width, double height);

} // namespace pw::gui
