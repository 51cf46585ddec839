#include "app/gui/propose/proposal_model.h"

namespace pw::gui {

void ProposalModel::set(std::vector<ProposalRow> rows, QStringList rules) {
    beginResetModel();
    m_rows = std::move(rows);
    m_rules = std::move(rules);
    endResetModel();
}

const ProposalRow* ProposalModel::rowAt(const QModelIndex& index) const {
    return index.isValid() && static_cast<std::size_t>(index.row()) < m_rows.size()
               ? &m_rows[static_cast<std::size_t>(index.row())]
               : nullptr;
}

int ProposalModel::rowCount(const QModelIndex& parent) const {
    if (parent.isValid())
        return 0;
    return static_cast<int>(m_rows.size()) + (m_rows.empty() || m_rules.isEmpty() ? 0 : 1);
}

QVariant ProposalModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid())
        return {};
    const ProposalRow* row = rowAt(index);
    if (role == Qt::DisplayRole)
        return row ? row->title : tr("How the sizes were found");
    if (role == Qt::AccessibleTextRole)
        return row ? spokenProposal(*row)
                   : tr("How the sizes were found: %1").arg(m_rules.join(QLatin1Char(' ')));
    return {};
}

Qt::ItemFlags ProposalModel::flags(const QModelIndex& index) const {
    if (!index.isValid())
        return Qt::NoItemFlags;
    const Qt::ItemFlags all = Qt::ItemIsEnabled | Qt::ItemNeverHasChildren;
    return rowAt(index) ? all | Qt::ItemIsSelectable : all;
}

} // namespace pw::gui
