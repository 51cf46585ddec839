#pragma once

#include <QDialog>
#include <string>

class QListWidget;
class QTextBrowser;

namespace pw::gui {

/// The help beside the job: pages on the left, the page on the right. Its links open fields and views of the
/// job's window.
class HelpWindow : public QDialog {
    Q_OBJECT

public:
    explicit HelpWindow(QWidget* parent);

    /// "page" or "page#mark"; an unknown page is the first one.
    void showPage(const QString& where);
    QString page() const { return m_page; }
    QTextBrowser& text() { return *m_text; }
    QListWidget& list() { return *m_list; }

Q_SIGNALS:
    void figureAsked(const std::string& path);
    void viewAsked(const QString& name);
    /// "ring", "bar", "bolts" or "strongback"
    void newAsked(const QString& kind);

protected:
    void paintEvent(QPaintEvent*) override;

private:
    void applyLook();
    void follow(const QString& link);

    QListWidget* m_list;
    QTextBrowser* m_text;
    QString m_page;
};

} // namespace pw::gui
