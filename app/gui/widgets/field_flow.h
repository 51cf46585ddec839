#pragma once

#include <QPointer>
#include <QWidget>
#include <vector>

namespace pw::gui {

class FieldBox;
class MeasureCard;
class NoteLine;

/// Fields in pairs where they fit, one a row where they do not; under each row what is needed or wrong, and
/// the measuring card of the field that is being typed in. Other widgets take a row of their own.
class FieldFlow : public QWidget {
    Q_OBJECT

public:
    explicit FieldFlow(QWidget* parent = nullptr);

    void addField(FieldBox* field, bool wide);
    void addRow(QWidget* widget);
    /// Takes everything out; the widgets are deleted later.
    void clear();
    /// Words under a field; empty takes them away.
    void setNote(FieldBox* field, const QString& text, bool needed);
    QString noteOf(const FieldBox* field) const;
    /// Opens the card under a field's row; null closes it.
    void openCard(FieldBox* field, MeasureCard* card);

    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override { return arrange(width, false); }
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void resizeEvent(QResizeEvent*) override;
    bool event(QEvent* event) override;

private:
    struct Item {
        QWidget* widget = nullptr;
        FieldBox* field = nullptr; ///< the same widget, when it is a field
        NoteLine* note = nullptr;
        bool wide = false;
    };

    int arrange(int width, bool place) const;
    void relayout();

    std::vector<Item> m_items;
    QPointer<MeasureCard> m_card;
    FieldBox* m_cardField = nullptr;
};

} // namespace pw::gui
