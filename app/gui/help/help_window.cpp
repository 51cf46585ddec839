#include "app/gui/help/help_window.h"

#include "app/gui/help/help_pages.h"
#include "app/gui/help/help_scenes.h"
#include "app/gui/widgets/look.h"
#include "app/gui/widgets/measure_card.h"

#include <QHBoxLayout>
#include <QListWidget>
#include <QPainter>
#include <QTextBrowser>

namespace pw::gui {

namespace {

/// Shows pictures that are drawn when they are asked for.
class HelpText : public QTextBrowser {
public:
    using QTextBrowser::QTextBrowser;

    QVariant loadResource(int type, const QUrl& name) override {
        if (type == QTextDocument::ImageResource && name.scheme() == QLatin1String("scene"))
            return helpScene(name.path(), devicePixelRatioF());
        if (type == QTextDocument::ImageResource && name.scheme() == QLatin1String("sketch"))
            return sketch(static_cast<Sketch>(name.path().toInt()));
        return {}; // nothing of the page lies anywhere else
    }

private:
    QImage sketch(Sketch which) const {
        const double ratio = devicePixelRatioF(), scale = Look::now().scale();
        QImage image(QSizeF(92 * scale * ratio, 74 * scale * ratio).toSize(),
                     QImage::Format_ARGB32_Premultiplied);
        image.setDevicePixelRatio(ratio);
        image.fill(Look::now().colours().touchSoft);
        QPainter painter(&image);
        drawSketch(painter, QRectF(0, 0, 92 * scale, 74 * scale), which);
        return image;
    }
};

} // namespace

HelpWindow::HelpWindow(QWidget* parent)
    : QDialog(parent), m_list(new QListWidget(this)), m_text(new HelpText(this)) {
    setWindowTitle(tr("Help"));
    setAttribute(Qt::WA_DeleteOnClose);
    m_list->setAccessibleName(tr("Pages of the help"));
    m_list->setFrameShape(QFrame::NoFrame);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setWordWrap(true);
    m_text->setAccessibleName(tr("Page of the help"));
    m_text->setFrameShape(QFrame::NoFrame);
    m_text->setOpenLinks(false);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(1);
    row->addWidget(m_list);
    row->addWidget(m_text, 1);
    for (const auto& page : helpPages()) {
        auto* item = new QListWidgetItem(page.title, m_list);
        item->setData(Qt::UserRole, page.name);
    }
    connect(m_list, &QListWidget::currentItemChanged, this, [this](QListWidgetItem* item) {
        if (item && item->data(Qt::UserRole).toString() != m_page)
            showPage(item->data(Qt::UserRole).toString());
    });
    connect(m_text, &QTextBrowser::anchorClicked, this, [this](const QUrl& url) { follow(url.toString()); });
    connect(&Look::now(), &Look::changed, this, &HelpWindow::applyLook);
    resize(QSize(Look::now().px(860), Look::now().px(660)));
    applyLook();
    showPage({});
}

void HelpWindow::showPage(const QString& where) {
    const QString name = where.section(QLatin1Char('#'), 0, 0), mark = where.section(QLatin1Char('#'), 1);
    int found = 0;
    for (int i = 0; i < m_list->count(); ++i)
        if (m_list->item(i)->data(Qt::UserRole).toString() == name)
            found = i;
    m_page = m_list->item(found)->data(Qt::UserRole).toString();
    m_list->setCurrentRow(found);
    m_text->setHtml(helpPage(m_page));
    if (!mark.isEmpty())
        m_text->scrollToAnchor(mark);
}

void HelpWindow::follow(const QString& link) {
    const QString kind = link.section(QLatin1Char(':'), 0, 0), what = link.section(QLatin1Char(':'), 1);
    if (kind == QLatin1String("page"))
        showPage(what);
    else if (kind == QLatin1String("verdict"))
        showPage(QStringLiteral("checks"));
    else if (kind == QLatin1String("figure"))
        Q_EMIT figureAsked(what.toStdString());
    else if (kind == QLatin1String("view"))
        Q_EMIT viewAsked(what);
    else if (kind == QLatin1String("new"))
        Q_EMIT newAsked(what);
}

void HelpWindow::applyLook() {
    const Look& look = Look::now();
    const Palette& c = look.colours();
    setPalette(c.forQt());
    setFont(look.font(Type::Sentence));
    m_list->setFont(look.font(Type::Button));
    m_list->setFixedWidth(look.px(196));
    m_list->setSpacing(look.px(4));
    m_text->setFont(look.font(Type::Sentence));
    m_text->document()->setDocumentMargin(look.px(24));
    m_text->document()->setDefaultStyleSheet(
        QStringLiteral("h1 { font-size: %1px; } h2 { font-size: %2px; } h3 { font-size: %3px; } "
                       "a { color: %4; text-decoration: none; } p, li { line-height: 96%; }")
            .arg(look.px(26))
            .arg(look.px(20))
            .arg(look.px(17))
            .arg(c.touch.name()));
    if (!m_page.isEmpty())
        m_text->setHtml(helpPage(m_page));
}

void HelpWindow::paintEvent(QPaintEvent*) {
    QPainter(this).fillRect(rect(), Look::now().colours().rule);
}

} // namespace pw::gui
