#include "app/gui/models/rack_model.h"

namespace pw::gui {

void RackModel::setRows(std::vector<RackRow> rows) {
    beginResetModel();
    m_rows = std::move(rows);
    endResetModel();
}

const RackRow* RackModel::rowAt(const QModelIndex& index) const {
    return index.isValid() && static_cast<std::size_t>(index.row()) < m_rows.size()
               ? &m_rows[static_cast<std::size_t>(index.row())]
               : nullptr;
}

QModelIndex RackModel::indexOf(std::size_t row) const {
    for (std::size_t i = 0; i < m_rows.size(); ++i)
        if (m_rows[i].kind != RackRow::Kind::Heading && m_rows[i].row == row)
            return index(static_cast<int>(i));
    return {};
}

int RackModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QVariant RackModel::data(const QModelIndex& index, int role) const {
    const RackRow* row = rowAt(index);
    if (!row)
        return {};
    switch (role) {
    case Qt::DisplayRole:
        return row->title;
    case Qt::AccessibleTextRole:
    case Qt::ToolTipRole:
        return row->kind == RackRow::Kind::Heading ? row->title : spokenRow(*row);
    default:
        return {};
    }
}

Qt::ItemFlags RackModel::flags(const QModelIndex& index) const {
    const RackRow* row = rowAt(index);
    if (!row)
        return Qt::NoItemFlags;
    const Qt::ItemFlags last = Qt::ItemNeverHasChildren;
    return row->kind == RackRow::Kind::Heading ? last : last | Qt::ItemIsEnabled | Qt::ItemIsSelectable;
}

} // namespace pw::gui
