#include "app/gui/widgets/field_flow.h"

#include "app/gui/widgets/field_box.h"
#include "app/gui/widgets/measure_card.h"
#include "app/gui/widgets/note_line.h"

#include <QEvent>

namespace pw::gui {

FieldFlow::FieldFlow(QWidget* parent) : QWidget(parent) {
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    connect(&Look::now(), &Look::changed, this, &FieldFlow::relayout);
}

void FieldFlow::addField(FieldBox* field, bool wide) {
    field->setParent(this);
    auto* note = new NoteLine(this);
    note->hide();
    m_items.push_back({field, field, note, wide});
    field->show();
    relayout();
}

void FieldFlow::addRow(QWidget* widget) {
    widget->setParent(this);
    m_items.push_back({widget, nullptr, nullptr, true});
    widget->show();
    relayout();
}

void FieldFlow::clear() {
    openCard(nullptr, nullptr);
    for (const Item& item : m_items) {
        // A box that is hidden loses the keyboard and would put half-typed text into the job from here.
        item.widget->blockSignals(true);
        item.widget->hide();
        item.widget->deleteLater();
        if (item.note) {
            item.note->hide();
            item.note->deleteLater();
        }
    }
    m_items.clear();
    relayout();
}

void FieldFlow::setNote(FieldBox* field, const QString& text, bool needed) {
    for (const Item& item : m_items) {
        if (item.field != field)
            continue;
        item.note->set(text, needed);
        item.note->setVisible(!text.isEmpty());
        relayout();
        return;
    }
}

QString FieldFlow::noteOf(const FieldBox* field) const {
    for (const Item& item : m_items)
        if (item.field == field)
            return item.note->isHidden() ? QString() : item.note->text();
    return {};
}

void FieldFlow::openCard(FieldBox* field, MeasureCard* card) {
    if (m_card && m_card != card) {
        m_card->hide(); // it goes later only, and not at all while a dialog is open
        m_card->deleteLater();
    }
    m_card = card;
    m_cardField = field;
    if (card) {
        card->setParent(this);
        card->show();
    }
    relayout();
}

int FieldFlow::arrange(int width, bool place) const {
    const Look& look = Look::now();
    const int gap = look.px(8), half = (width - gap) / 2;
    const auto pairs = [&](const Item& item) {
        return item.field && !item.wide && half >= look.px(116) && item.field->wantedWidth() <= half;
    };
    const auto put = [&](QWidget* widget, int x, int y, int w) {
        const int h = widget->hasHeightForWidth() ? widget->heightForWidth(w) : widget->sizeHint().height();
        if (place)
            widget->setGeometry(x, y, w, h);
        return h;
    };
    int y = 0;
    std::size_t i = 0;
    while (i < m_items.size()) {
        if (m_items[i].widget->isHidden()) {
            ++i;
            continue;
        }
        std::size_t next = i + 1;
        while (next < m_items.size() && m_items[next].widget->isHidden())
            ++next;
        std::vector<const Item*> row{&m_items[i]};
        if (next < m_items.size() && pairs(m_items[i]) && pairs(m_items[next]))
            row.push_back(&m_items[next]);
        // A field alone on its row that would have fitted in a pair keeps its width only if one follows that
        // does not.
        const int cell = row.size() == 2 || (pairs(m_items[i]) && !m_items[i].wide) ? half : width;
        int height = 0;
        for (std::size_t k = 0; k < row.size(); ++k)
            height = std::max(height, put(row[k]->widget, static_cast<int>(k) * (half + gap), y, cell));
        y += height + look.px(6);
        for (const Item* item : row)
            if (item->note && !item->note->isHidden())
                y += put(item->note, 0, y, width) + look.px(6);
        for (const Item* item : row)
            if (m_card && item->field == m_cardField)
                y += put(m_card, 0, y, width) + look.px(6);
        i = row.size() == 2 ? next + 1 : next;
    }
    return y;
}

QSize FieldFlow::sizeHint() const {
    const int width = Look::now().px(284);
    return {width, arrange(width, false)};
}

QSize FieldFlow::minimumSizeHint() const {
    return {Look::now().px(120), 0};
}

void FieldFlow::relayout() {
    arrange(width(), true);
    updateGeometry();
}

void FieldFlow::resizeEvent(QResizeEvent*) {
    arrange(width(), true);
}

bool FieldFlow::event(QEvent* event) {
    if (event->type() == QEvent::LayoutRequest)
        relayout();
    return QWidget::event(event);
}

} // namespace pw::gui
