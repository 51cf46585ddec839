#pragma once

#include "app/gui/models/rack_rows.h"

#include <QAbstractListModel>

namespace pw::gui {

/// The rows of the rack for a list view; all that a row shows is in rowAt().
class RackModel : public QAbstractListModel {
    Q_OBJECT

public:
    using QAbstractListModel::QAbstractListModel;

    void setRows(std::vector<RackRow> rows);
    const std::vector<RackRow>& rows() const { return m_rows; }
    const RackRow* rowAt(const QModelIndex& index) const;
    /// Of the piece at this place in the file; invalid when there is none.
    QModelIndex indexOf(std::size_t row) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    /// Headings are no things to pick.
    Qt::ItemFlags flags(const QModelIndex& index) const override;

private:
    std::vector<RackRow> m_rows;
};

} // namespace pw::gui
