#include "app/gui/panels/verdict_panel.h"

#include "app/gui/models/field_text.h"
#include "app/gui/models/missing_order.h"
#include "app/gui/widgets/check_row.h"
#include "app/gui/widgets/look.h"
#include "app/gui/widgets/slim_scroll_area.h"
#include "app/gui/widgets/text_block.h"
#include "app/gui/widgets/verdict_head.h"
#include "app/gui/widgets/word_button.h"

#include <algorithm>
#include <cmath>
#include <QEvent>
#include <QFontMetricsF>
#include <QPainter>
#include <QTimer>
#include <QVBoxLayout>

namespace pw::gui {

namespace {

units::System other(units::System system) {
    return system == units::System::Metric ? units::System::Inch : units::System::Metric;
}

template<class Q>
QString shown(const engine::Found<Q>& figure, units::System system) {
    return figure ? local(units::show(*figure, system)) : QString();
}

} // namespace

/// Stop torque and rated load, and what the job itself needs.
class VerdictPanel::FiguresBlock : public QWidget {
public:
    explicit FiguresBlock(QWidget* parent) : QWidget(parent) {
        QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
        policy.setHeightForWidth(true);
        setSizePolicy(policy);
    }

    void set(const engine::Report* report, units::System system) {
        m_stop = m_stopOther = m_rated = m_ratedOther = m_words = m_brief = QString();
        m_short = false;
        if (report) {
            const auto& s = report->screw;
            m_stop = shown(s.stopTorque, system);
            m_stopOther = shown(s.stopTorque, other(system));
            if (!s.stopTorque && s.stopPressure) {
                m_stop = local(units::showPressure(*s.stopPressure, system));
                m_stopOther = VerdictPanel::tr("on the ram's gauge");
            }
            m_rated = shown(s.ratedLoad, system);
            m_ratedOther = shown(s.ratedLoad, other(system));
            if (s.torque) {
                const QString torque = shown(s.torque, system);
                // What only the tool could make need not be reached.
                const std::string& source = report->load.source;
                const bool reached = source == "springs" || source == "given" || source == "hub";
                m_short = reached && s.stopTorque && *s.stopTorque < *s.torque;
                const bool squeeze = report->load.source == "springs";
                m_brief = squeeze ? VerdictPanel::tr("Full squeeze takes %1.").arg(torque)
                                  : VerdictPanel::tr("Full load takes %1.").arg(torque);
                if (m_short)
                    m_words = squeeze ? VerdictPanel::tr("Not enough: full squeeze takes %1.").arg(torque)
                                      : VerdictPanel::tr("Not enough: full load takes %1.").arg(torque);
                else
                    m_words = squeeze ? VerdictPanel::tr("Full squeeze takes %1 on the wrench.").arg(torque)
                                      : VerdictPanel::tr("Full load takes %1 on the wrench.").arg(torque);
                const bool told =
                    report->grade != verdict::Grade::Holds && report->grade != verdict::Grade::Incomplete;
                m_colour = told ? Look::now().colours().of(report->grade).text : Look::now().colours().ink;
            } else if (report->load.total) {
                m_words = VerdictPanel::tr("Full load is %1.")
                              .arg(local(units::show(report->load.total->high, system)));
            }
        }
        setVisible(!m_stop.isEmpty() || !m_rated.isEmpty() || !m_words.isEmpty());
        setAccessibleName(VerdictPanel::tr("Stop at %1. Rated load %2. %3").arg(m_stop, m_rated, m_words));
        updateGeometry();
        update();
    }

    /// Without the second unit, for a low window.
    void setCompact(bool compact) {
        m_compact = compact;
        updateGeometry();
        update();
    }

    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override {
        return static_cast<int>(std::ceil(paint(nullptr, width)));
    }
    QSize sizeHint() const override { return {Look::now().px(330), heightForWidth(Look::now().px(330))}; }
    QSize minimumSizeHint() const override { return {Look::now().px(180), Look::now().px(30)}; }

protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        paint(&painter, width());
    }

private:
    double paint(QPainter* painter, int width) const {
        const Look& look = Look::now();
        const Palette& c = look.colours();
        const double left = look.pxF(16), inner = width - 2 * left;
        double y = look.pxF(8);
        const auto line = [&](double x, double w, double top, double height, Type type, const QColor& colour,
                              const QString& words) {
            if (!painter)
                return;
            painter->setFont(look.font(type));
            painter->setPen(colour);
            drawLine(*painter, QRectF(x, top, w, height), Qt::AlignLeft, words);
        };
        if (!m_stop.isEmpty() || !m_rated.isEmpty()) {
            const QFontMetricsF figure(look.font(Type::Figure));
            const double half = inner / 2 - look.pxF(4);
            const bool pair =
                std::max(figure.horizontalAdvance(m_stop), figure.horizontalAdvance(m_rated)) <= half;
            const auto block = [&](double x, double w, double top, const QString& label, const QString& value,
                                   const QString& second) {
                line(x, w, top, look.pxF(20), Type::Label, c.muted, label);
                if (value.isEmpty()) {
                    line(x, w, top + look.pxF(20), look.pxF(31), Type::Sentence, c.muted,
                         VerdictPanel::tr("not worked out"));
                    return;
                }
                line(x, w, top + look.pxF(20), look.pxF(31), Type::Figure, c.ink, value);
                if (!m_compact)
                    line(x, w, top + look.pxF(52), look.pxF(20), Type::Label, c.muted, second);
            };
            const double high = look.pxF(m_compact ? 54 : 73);
            block(left, pair ? half : inner, y, VerdictPanel::tr("Stop at"), m_stop, m_stopOther);
            block(pair ? left + inner / 2 : left, pair ? half : inner, pair ? y : y + high,
                  VerdictPanel::tr("Rated load"), m_rated, m_ratedOther);
            y += pair ? high : 2 * high;
        }
        if (!m_words.isEmpty()) {
            const Type type = m_short ? Type::ButtonBold : Type::Button;
            auto wrapped = wrapText(m_words, look.font(type), inner);
            if (!m_brief.isEmpty() && (m_compact || (!m_short && wrapped.lines.size() > 1)))
                wrapped = wrapText(m_brief, look.font(type), inner);
            if (painter) {
                painter->setFont(look.font(type));
                painter->setPen(m_short ? m_colour : c.ink);
                drawWrapped(*painter, wrapped, {left, y});
            }
            y += wrapped.height();
        }
        y += look.pxF(8);
        if (painter) {
            painter->setPen(QPen(c.rule, 1));
            painter->drawLine(QPointF(left, y - 0.5), QPointF(width - left, y - 0.5));
        }
        return y + 1;
    }

    QString m_stop, m_stopOther, m_rated, m_ratedOther, m_words, m_brief;
    bool m_short = false, m_compact = false;
    QColor m_colour;
};

/// Cautions that apply: the first stands out. Never scrolls away. Where there is no room for all of them the
/// first two stand and the rest are one click away.
class VerdictPanel::Cautions : public QWidget {
public:
    explicit Cautions(QWidget* parent)
        : QWidget(parent), m_link(new WordButton({}, WordButton::Style::Link, this)) {
        QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
        policy.setHeightForWidth(true);
        setSizePolicy(policy);
        m_link->setOpens(true);
        m_link->setCheckable(true);
        connect(m_link, &QAbstractButton::toggled, this, [this](bool open) {
            m_open = open;
            settle();
        });
    }

    void set(const std::vector<std::string>& cautions) {
        m_bold.clear();
        m_first.clear();
        m_rest.clear();
        for (std::size_t i = 0; i < cautions.size(); ++i) {
            const QString text = local(cautions[i]);
            if (i == 0) {
                const qsizetype stop = text.indexOf(QStringLiteral(". "));
                m_bold = stop < 0 ? text : text.left(stop + 1);
                m_first = stop < 0 ? QString() : text.mid(stop + 2);
            } else if (i == 1) {
                m_first += (m_first.isEmpty() ? QString() : QStringLiteral(" ")) + text;
            } else {
                m_rest << text;
            }
        }
        setVisible(!m_bold.isEmpty());
        setAccessibleName(
            VerdictPanel::tr("Cautions: %1 %2 %3").arg(m_bold, m_first, m_rest.join(QLatin1Char(' '))));
        settle();
    }

    /// Is there room for all of them without asking? For no more than the first words of the first?
    void setRoom(bool roomy, bool compact) {
        if (roomy == m_roomy && compact == m_compact)
            return;
        m_roomy = roomy;
        m_compact = compact;
        settle();
    }
    int heightOfAll(int width) const { return static_cast<int>(std::ceil(paint(nullptr, width, true))); }

    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override {
        return static_cast<int>(std::ceil(paint(nullptr, width, showsAll())));
    }
    QSize sizeHint() const override { return {Look::now().px(330), heightForWidth(Look::now().px(330))}; }
    QSize minimumSizeHint() const override { return {Look::now().px(180), Look::now().px(30)}; }

protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        painter.fillRect(rect(), Look::now().colours().ground);
        painter.setPen(Look::now().colours().rule);
        painter.drawLine(0, 0, width(), 0);
        paint(&painter, width(), showsAll());
    }
    void resizeEvent(QResizeEvent*) override { placeLink(); }

private:
    bool showsAll() const { return m_roomy || m_open; }
    bool hasLink() const { return !m_roomy && (!m_rest.isEmpty() || m_compact); }

    void settle() {
        m_link->setText(m_open ? VerdictPanel::tr("Fewer cautions") : VerdictPanel::tr("All cautions"));
        m_link->setVisible(hasLink());
        placeLink();
        updateGeometry();
        update();
    }

    void placeLink() {
        const Look& look = Look::now();
        const int high = look.px(28);
        m_link->setGeometry(look.px(12), height() - high - look.px(3), width() - look.px(24), high);
    }

    double paint(QPainter* painter, int width, bool all) const {
        const Look& look = Look::now();
        const double left = look.pxF(16), inner = width - 2 * left;
        double y = look.pxF(8);
        const auto text = [&](const QString& words, Type type) {
            if (words.isEmpty())
                return;
            const auto wrapped = wrapText(words, look.font(type), inner);
            if (painter) {
                painter->setFont(look.font(type));
                painter->setPen(look.colours().ink);
                drawWrapped(*painter, wrapped, {left, y});
            }
            y += wrapped.height();
        };
        // Long cautions are set in the smallest type rather than cut.
        const bool tight = m_bold.size() + m_first.size() > 150;
        text(m_bold, tight ? Type::LabelBold : Type::RowBold);
        if (all || !m_compact)
            text(m_first, tight ? Type::Label : Type::Row);
        if (all)
            for (const QString& caution : m_rest) {
                y += look.pxF(4);
                text(caution, Type::Label);
            }
        if (hasLink())
            y += look.pxF(24);
        return y + look.pxF(8);
    }

    QString m_bold, m_first;
    QStringList m_rest;
    bool m_roomy = false, m_compact = false, m_open = false;
    WordButton* m_link;
};

namespace {

/// "Checks, weakest first", and the word over the one upright line.
class ListHead : public QWidget {
public:
    explicit ListHead(QWidget* parent) : QWidget(parent) {
        setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    }
    QSize sizeHint() const override { return {Look::now().px(200), Look::now().px(27)}; }

protected:
    void paintEvent(QPaintEvent*) override {
        const Look& look = Look::now();
        QPainter painter(this);
        painter.setPen(look.colours().muted);
        const double right = width() - look.pxF(16);
        const double middle = right - CheckRow::valueWidth() - look.pxF(4) - CheckRow::barWidth(width()) / 2;
        painter.setFont(look.font(Type::Label));
        const QString wanted = VerdictPanel::tr("wanted");
        const double half = QFontMetricsF(painter.font()).horizontalAdvance(wanted) / 2;
        drawLine(painter, QRectF(middle - half, 0, 2 * half + 1, height()), Qt::AlignLeft, wanted, false);
        painter.setFont(look.font(Type::LabelBold));
        drawLine(painter, QRectF(look.pxF(16), 0, middle - half - look.pxF(22), height()), Qt::AlignLeft,
                 VerdictPanel::tr("Checks, weakest first"));
    }
};

} // namespace

VerdictPanel::VerdictPanel(QWidget* parent)
    : QWidget(parent), m_head(new VerdictHead(this)), m_figures(new FiguresBlock(this)),
      m_notCounted(new WordButton({}, WordButton::Style::Boxed, this)),
      m_needed(new WordButton({}, WordButton::Style::Filled, this)),
      m_propose(new WordButton(tr("Propose a plate…"), WordButton::Style::Boxed, this)),
      m_mend(new WordButton({}, WordButton::Style::Filled, this)), m_listHead(new ListHead(this)),
      m_scroll(new SlimScrollArea(this)), m_list(new QWidget),
      m_more(new WordButton({}, WordButton::Style::Link, this)), m_cautions(new Cautions(this)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_head);
    column->addWidget(m_figures);
    for (auto* button : {m_notCounted, m_needed, m_propose, m_mend}) {
        button->setMargins(16, 8, 16, 4);
        column->addWidget(button);
        button->hide();
    }
    column->addWidget(m_listHead);
    column->addWidget(m_scroll, 1);
    column->addWidget(m_more);
    column->addWidget(m_cautions);

    for (auto* button : {m_notCounted, m_propose})
        button->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed); // as wide as the others
    m_scroll->setMinimumHeight(40);
    m_scroll->installEventFilter(this);
    m_scroll->setWidget(m_list);
    auto* rows = new QVBoxLayout(m_list);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(0);
    rows->addStretch(1);

    m_more->setOpens(true);
    m_more->setMargins(44, 0, 12, 0);
    m_more->setCheckable(true);
    connect(m_more, &QAbstractButton::toggled, this, [this](bool all) {
        m_all = all;
        foldRows();
    });
    connect(m_mend, &QAbstractButton::clicked, this, [this] {
        if (m_report && !m_report->changes.empty())
            Q_EMIT mendAsked(m_report->changes.front());
    });
    connect(m_notCounted, &QAbstractButton::clicked, this, [this] { Q_EMIT fieldAsked(m_notCountedField); });
    connect(m_needed, &QAbstractButton::clicked, this, [this] {
        if (m_report && !m_report->missing.empty())
            Q_EMIT fieldAsked(m_report->missing.front().field);
    });
    connect(m_propose, &QAbstractButton::clicked, this, &VerdictPanel::proposeAsked);
    connect(&Look::now(), &Look::changed, this, [this] {
        m_scroll->setMinimumHeight(Look::now().px(40));
        refresh();
    });
    m_figures->hide();
    m_cautions->hide();
    m_listHead->hide();
    m_more->hide();
    m_head->setVerdict(verdict::Grade::Incomplete, tr("Working it out."));
}

QSize VerdictPanel::sizeHint() const {
    return {Look::now().px(330), 600};
}

QSize VerdictPanel::minimumSizeHint() const {
    return {Look::now().px(220), 200};
}

void VerdictPanel::paintEvent(QPaintEvent*) {
    const Palette& c = Look::now().colours();
    QPainter painter(this);
    painter.fillRect(rect(), c.panel);
}

void VerdictPanel::resizeEvent(QResizeEvent*) {
    settleRoom();
}

bool VerdictPanel::eventFilter(QObject* watched, QEvent* event) {
    // How many rows have room is known only once the column has been laid out.
    if (watched == m_scroll && event->type() == QEvent::Resize)
        QTimer::singleShot(0, this, &VerdictPanel::foldRows);
    return QWidget::eventFilter(watched, event);
}

void VerdictPanel::settleRoom() {
    const Look& look = Look::now();
    const bool compact = height() < look.px(520);
    m_head->setCompact(compact);
    m_figures->setCompact(compact);
    m_listHead->setVisible(!compact && !m_rows.empty());
    // All cautions stand when the head, the figures and eight rows still fit above them.
    const int above = m_head->heightForWidth(width()) + look.px(120 + 27 + 8 * 35);
    m_cautions->setRoom(height() - above >= m_cautions->heightOfAll(width()), compact);
    foldRows();
}

void VerdictPanel::setUnits(units::System system) {
    m_units = system;
    refresh();
}

void VerdictPanel::setReport(std::shared_ptr<const engine::Report> report) {
    m_report = std::move(report);
    m_head->setBusy(-1, {});
    refresh();
}

void VerdictPanel::setBusy(double done, const QString& what) {
    m_head->setBusy(done, what);
}

void VerdictPanel::setAhead(const QString& words) {
    m_head->setAhead(words);
}

void VerdictPanel::setNotCounted(const QString& label, const std::string& field, std::size_t count) {
    m_notCountedField = field;
    m_notCounted->setText(count > 1 ? tr("Not counted: %1 and %2 more").arg(label).arg(count - 1)
                                    : tr("Not counted: %1").arg(label));
    m_notCounted->setVisible(count > 0);
    settleRoom();
}

void VerdictPanel::setFailure(const QString& what) {
    m_report.reset();
    refresh();
    m_head->setBusy(-1, {});
    m_head->setVerdict(
        verdict::Grade::Incomplete,
        tr("The check stopped on a fault of the program: %1. Undo the last change; the job is safe.")
            .arg(what));
}

void VerdictPanel::refresh() {
    m_figures->set(m_report.get(), m_units);
    m_cautions->set(m_report ? m_report->cautions : std::vector<std::string>());
    m_mend->hide();
    m_needed->hide();
    m_propose->setVisible(m_proposes && m_report && asksForPlate(*m_report));
    if (m_report) {
        QString reason = local(m_report->reason);
        if (reason.isEmpty() && !m_report->missing.empty())
            reason = local(m_report->missing.front().how);
        m_head->setVerdict(m_report->grade, reason);
        if (!m_report->changes.empty()) {
            // First sentence bold, what comes of it below.
            const QString what = local(m_report->changes.front().what);
            const qsizetype stop = what.indexOf(QStringLiteral(". "));
            m_mend->setText(stop < 0 ? what : what.left(stop));
            m_mend->setSecondLine(stop < 0 ? QString() : what.mid(stop + 2));
            m_mend->setVisible(true);
        }
        if (m_report->grade == verdict::Grade::Incomplete && !m_report->missing.empty()) {
            const auto count = m_report->missing.size();
            m_needed->setText(tr("Go to the figure"));
            m_needed->setSecondLine(count > 1 ? tr("%1 are still needed.").arg(count)
                                              : tr("It is the only one left."));
            m_needed->setVisible(true);
        }
    }
    showRows();
    settleRoom();
}

void VerdictPanel::showRows() {
    // While figures are missing there is nothing to list: every check would only say so.
    const bool asking =
        m_report && m_report->grade == verdict::Grade::Incomplete && !m_report->missing.empty();
    const std::size_t count = m_report && !asking ? m_report->checks.size() : 0;
    auto* column = static_cast<QVBoxLayout*>(m_list->layout());
    while (m_rows.size() < count) {
        auto* row = new CheckRow(m_list);
        connect(row, &CheckRow::picked, this, [this, row] { pick(row); });
        column->insertWidget(static_cast<int>(m_rows.size()), row);
        m_rows.push_back(row);
    }
    while (m_rows.size() > count) {
        m_rows.back()->hide();
        m_rows.back()->deleteLater();
        m_rows.pop_back();
    }
    for (std::size_t i = 0; i < count; ++i) {
        m_rows[i]->set(m_report->checks[i], m_units);
        m_rows[i]->setOpen(!m_openId.empty() && m_report->checks[i].id == m_openId);
    }
    foldRows();
}

void VerdictPanel::pick(CheckRow* row) {
    const bool opens = !row->isOpen();
    m_openId = opens ? row->check().id : std::string();
    for (auto* each : m_rows)
        each->setOpen(opens && each == row);
    Q_EMIT checkOpened(m_openId);
    Q_EMIT checkPicked(opens ? row->check().where : std::vector<shape::Point>());
    if (opens) {
        layout()->activate();
        m_scroll->ensureWidgetVisible(row, 0, 0);
    }
}

void VerdictPanel::foldRows() {
    const int count = static_cast<int>(m_rows.size());
    int bad = 0, all = 0;
    std::vector<int> heights;
    for (const auto* row : m_rows) {
        const auto grade = row->check().grade;
        bad += grade != verdict::Grade::Holds && grade != verdict::Grade::Incomplete;
        heights.push_back(row->heightForWidth(m_scroll->viewport()->width()));
        all += heights.back();
    }
    // What the column has room for without scrolling; more only for what does not hold.
    const int link = m_more->sizeHint().height();
    const int room = m_scroll->height() + (m_more->isHidden() ? 0 : link);
    int kept = count;
    if (all > room) {
        int used = link;
        for (kept = 0; kept < count && used + heights[static_cast<std::size_t>(kept)] <= room; ++kept)
            used += heights[static_cast<std::size_t>(kept)];
        kept = std::max({kept, bad, 1});
    }
    bool folded = false, allHold = true;
    for (int i = 0; i < count; ++i) {
        const bool shown = m_all || i < kept || m_rows[static_cast<std::size_t>(i)]->isOpen();
        folded = folded || i >= kept;
        if (i >= kept && m_rows[static_cast<std::size_t>(i)]->check().grade != verdict::Grade::Holds)
            allHold = false;
        m_rows[static_cast<std::size_t>(i)]->setVisible(shown);
    }
    const int hidden = count - kept;
    if (m_all)
        m_more->setText(tr("Fewer"));
    else
        m_more->setText(allHold ? tr("%1 more, all hold").arg(hidden) : tr("%1 more").arg(hidden));
    m_more->setVisible(folded);
}

} // namespace pw::gui
