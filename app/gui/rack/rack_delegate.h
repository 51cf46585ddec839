#pragma once

#include "app/gui/models/rack_model.h"

#include <QStyledItemDelegate>

namespace pw::gui {

/// How a row of the rack is drawn: the piece to the common scale with the plate on it, what it is, what would
/// be made of it, and its verdict with the margin against the one upright "wanted" line.
class RackDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    using QStyledItemDelegate::QStyledItemDelegate;

    /// px per mm of all pictures.
    void setScale(double scale) { m_scale = scale; }
    /// What stands there is being worked out anew: paler.
    void setStale(bool stale) { m_stale = stale; }
    /// The piece that lies under the plan now; none: npos.
    void setUnder(std::size_t row) { m_under = row; }

    /// In a narrow place the verdict stands under the name, and the words get all the width.
    void setNarrow(bool narrow) { m_narrow = narrow; }
    static constexpr double kNarrowUnder = 560; ///< design px of the list

    static QSizeF pictureSize();
    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
    void paintVerdict(QPainter& painter, const RackRow& row, const QRectF& mark, const QRectF& bar) const;
    void paintWords(QPainter& painter, const RackRow& row, const QRectF& box) const;

    double m_scale = 1;
    bool m_stale = false, m_narrow = false;
    std::size_t m_under = static_cast<std::size_t>(-1);
};

} // namespace pw::gui
