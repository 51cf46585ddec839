#pragma once

#include "app/gui/propose/proposal_model.h"

#include <QStyledItemDelegate>

namespace pw::gui {

/// How a proposed plate is drawn: the plate to the common scale, what it is and costs, and its verdict with
/// the margin against the one upright "wanted" line. As tall as its words are.
class ProposalDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    using QStyledItemDelegate::QStyledItemDelegate;

    /// What stands there is being worked out anew: paler.
    void setStale(bool stale) { m_stale = stale; }

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
    bool m_stale = false;
};

} // namespace pw::gui
