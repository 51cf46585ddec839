#include "app/gui/panels/preferences.h"

#include "app/gui/settings/languages.h"
#include "app/gui/settings/settings.h"
#include "app/gui/widgets/look.h"
#include "app/gui/widgets/segments.h"
#include "app/gui/widgets/text_block.h"
#include "app/gui/widgets/word_button.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <QHBoxLayout>
#include <QLocale>
#include <QPainter>
#include <QVBoxLayout>

namespace pw::gui {

namespace {

constexpr std::array kTextSizes{1.0, 1.25, 1.5, 2.0};
constexpr std::array kSnapsMm{0.5, 1.0, 2.0, 5.0};
constexpr std::array kSnapsInch{1.0 / 32, 1.0 / 16, 1.0 / 8, 1.0 / 4};

template<class List>
int nearest(const List& values, double value) {
    const auto best = std::min_element(values.begin(), values.end(), [value](double a, double b) {
        return std::abs(a - value) < std::abs(b - value);
    });
    return static_cast<int>(best - values.begin());
}

} // namespace

Preferences::Preferences(QWidget* parent) : QDialog(parent) {
    setWindowTitle(tr("Preferences"));
    auto* column = new QVBoxLayout(this);
    column->setSizeConstraint(QLayout::SetFixedSize);

    add(
        column, QStringLiteral("units"), tr("Units"), {tr("mm"), tr("inch")},
        [] { return settings::unitSystem() == units::System::Inch ? 1 : 0; },
        [](int i) { settings::setUnitSystem(i == 1 ? units::System::Inch : units::System::Metric); });
    const auto known = settings::languages();
    QStringList names;
    for (const auto& language : known)
        names << language.name;
    add(
        column, QStringLiteral("language"), tr("Language"), names,
        [known] {
            const auto at = std::find_if(known.begin(), known.end(), [](const settings::Language& language) {
                return language.code == settings::language();
            });
            return at == known.end() ? 0 : static_cast<int>(at - known.begin());
        },
        [known](int i) { settings::setLanguage(known[static_cast<std::size_t>(i)].code); });
    add(
        column, QStringLiteral("colours"), tr("Look"), {tr("As the desktop"), tr("Light"), tr("Dark")},
        [] { return static_cast<int>(settings::colours()); },
        [](int i) { settings::setColours(static_cast<settings::Colours>(i)); });
    QStringList sizes;
    for (const double times : kTextSizes)
        sizes << tr("%1 %").arg(qRound(times * 100));
    add(
        column, QStringLiteral("text"), tr("Text size"), sizes,
        [] { return nearest(kTextSizes, settings::textSize()); },
        [](int i) { settings::setTextSize(kTextSizes[static_cast<std::size_t>(i)]); });
    add(
        column, QStringLiteral("motion"), tr("Motion"), {tr("Gliding"), tr("None")},
        [] { return settings::lessMotion() ? 1 : 0; }, [](int i) { settings::setLessMotion(i == 1); });
    QStringList steps;
    for (const double mm : kSnapsMm)
        steps << tr("%1 mm").arg(QLocale().toString(mm));
    add(
        column, QStringLiteral("snap_mm"), tr("A drag snaps to"), steps,
        [] { return nearest(kSnapsMm, settings::snapStepMm(units::System::Metric)); },
        [](int i) { settings::setSnapStepMm(units::System::Metric, kSnapsMm[static_cast<std::size_t>(i)]); });
    add(
        column, QStringLiteral("snap_inch"), tr("A drag snaps to"),
        {tr("1/32 in"), tr("1/16 in"), tr("1/8 in"), tr("1/4 in")},
        [] { return nearest(kSnapsInch, settings::snapStepMm(units::System::Inch) / units::kMmPerInch); },
        [](int i) {
            settings::setSnapStepMm(units::System::Inch,
                                    kSnapsInch[static_cast<std::size_t>(i)] * units::kMmPerInch);
        });
    add(
        column, QStringLiteral("paper"), tr("Paper"), {tr("A4"), tr("Letter")},
        [] { return settings::paper() == settings::Paper::Letter ? 1 : 0; },
        [](int i) { settings::setPaper(i == 1 ? settings::Paper::Letter : settings::Paper::A4); });

    auto* foot = new QHBoxLayout;
    foot->addStretch(1);
    auto* done = new WordButton(tr("Done"), WordButton::Style::Boxed, this);
    connect(done, &QAbstractButton::clicked, this, &QDialog::accept);
    foot->addWidget(done);
    column->addLayout(foot);
    connect(&Look::now(), &Look::changed, this, &Preferences::applyLook);
    applyLook();
    refresh();
}

void Preferences::add(QVBoxLayout* column, const QString& name, const QString& label,
                      const QStringList& words, std::function<int()> now, std::function<void(int)> choose) {
    auto* line = new QHBoxLayout;
    auto* title = new TextBlock(Type::Row, &Palette::ink, this);
    title->setText(label);
    title->setMaxLines(1);
    line->addWidget(title, 1, Qt::AlignVCenter);
    auto* row = new Segments(words, label, this);
    row->setObjectName(name);
    line->addWidget(row, 0, Qt::AlignRight);
    column->addLayout(line);
    connect(row, &Segments::chosen, this, [this, choose = std::move(choose)](int index) {
        choose(index);
        Q_EMIT changed();
    });
    m_rows.push_back({title, row, std::move(now)});
}

Segments* Preferences::row(const QString& name) const {
    return findChild<Segments*>(name);
}

void Preferences::refresh() {
    const bool inch = settings::unitSystem() == units::System::Inch;
    for (const Row& row : m_rows) {
        row.words->setCurrent(row.now());
        // The step of the unit that counts.
        const QString name = row.words->objectName();
        if (name.startsWith(QLatin1String("snap_"))) {
            row.words->setVisible(name.endsWith(QLatin1String("inch")) == inch);
            row.title->setVisible(name.endsWith(QLatin1String("inch")) == inch);
        }
    }
}

void Preferences::applyLook() {
    const Look& look = Look::now();
    setPalette(look.colours().forQt());
    layout()->setContentsMargins(look.px(20), 16, look.px(16), 16);
    layout()->setSpacing(10); // not scaled: at 200 % it has to fit a low screen
    for (auto* title : findChildren<TextBlock*>())
        title->setMinimumWidth(look.px(170));
    update();
}

void Preferences::paintEvent(QPaintEvent*) {
    QPainter(this).fillRect(rect(), Look::now().colours().panel);
}

} // namespace pw::gui
