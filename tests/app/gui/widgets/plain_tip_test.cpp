#include "app/gui/widgets/plain_tip.h"

#include "app/gui/widgets/verdict_head.h"

#include <gtest/gtest.h>
#include <QTextDocument>

namespace pw::gui {
namespace {

/// As a tool tip shows it.
QString shown(const QString& tip) {
    if (!Qt::mightBeRichText(tip))
        return tip;
    QTextDocument document;
    document.setHtml(tip);
    return document.toPlainText();
}

TEST(PlainTip, shows_every_text_as_it_stands) {
    for (const char* text :
         {"first to give: plate", "<b>holds</b>", "<img src=\"/etc/passwd\"> & <a href='x'>y</a>",
          "a < b & c > d", "&lt;b&gt;", "<qt>", "A & B", "<html><body>breaks</body></html>"})
        EXPECT_EQ(shown(plainTip(QString::fromUtf8(text))), QString::fromUtf8(text)) << text;
}

TEST(PlainTip, is_what_the_verdict_uses_for_a_reason_that_names_something_of_the_job) {
    VerdictHead head;
    const QString reason = QStringLiteral("The rack has no piece called \"<img src=x>\".");
    head.setVerdict(verdict::Grade::Breaks, reason);
    EXPECT_EQ(shown(head.toolTip()), reason);
    EXPECT_FALSE(head.toolTip().contains(QLatin1String("<img")));
}

} // namespace
} // namespace pw::gui
