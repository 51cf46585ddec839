#pragma once

#include "app/gui/models/proposal_rows.h"

#include <QAbstractListModel>

namespace pw::gui {

/// Proposed plates for a list view, and behind them, as the last row, the rules by which they were found: so
/// that these scroll with the rest and are never cut off.
class ProposalModel : public QAbstractListModel {
    Q_OBJECT

public:
    using QAbstractListModel::QAbstractListModel;

    void set(std::vector<ProposalRow> rows, QStringList rules);
    const std::vector<ProposalRow>& rows() const { return m_rows; }
    const QStringList& rules() const { return m_rules; }
    /// Null: the row of the rules.
    const ProposalRow* rowAt(const QModelIndex& index) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    /// The rules can be gone to, but not taken.
    Qt::ItemFlags flags(const QModelIndex& index) const override;

private:
    std::vector<ProposalRow> m_rows;
    QStringList m_rules;
};

} // namespace pw::gui
