#pragma once

#include "core/verdict/check.h"

#include <QColor>
#include <QVariantAnimation>
#include <QWidget>

namespace pw::gui {

/// The filled head of the verdict column: mark, word, one reason. While newer work runs it keeps the last
/// verdict, pales to 60 %, and a thin bar with words runs along its foot.
class VerdictHead : public QWidget {
    Q_OBJECT

public:
    explicit VerdictHead(QWidget* parent = nullptr);

    void setVerdict(verdict::Grade grade, const QString& reason);
    /// `done` 0..1 and what is being done; below 0: nothing is running.
    void setBusy(double done, const QString& what);
    bool isBusy() const { return m_done >= 0; }
    /// How long what runs will take, said before it starts; busy at once then. Empty: nothing to say. Stands
    /// until nothing is running.
    void setAhead(const QString& words);
    QString busyWords() const;
    /// Smaller mark and word, for a low window or very large type.
    void setCompact(bool compact);
    verdict::Grade grade() const { return m_grade; }
    QString reason() const { return m_reason; }

    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent*) override;

private:
    verdict::Grade m_grade = verdict::Grade::Incomplete;
    QString m_reason;
    double topHeight() const;
    bool m_compact = false;
    double m_done = -1;
    QString m_what, m_ahead;
    QColor m_from; ///< fill that is being left
    QVariantAnimation m_fade;
};

/// The verdict's word in the language of the window.
QString verdictWord(verdict::Grade grade);

} // namespace pw::gui
