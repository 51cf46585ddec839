#include "app/gui/models/field_text.h"

#include <cmath>
#include <QCoreApplication>
#include <QRegularExpression>

namespace pw::gui {

using jobfile::Tree;
using units::Kind;
using units::System;

namespace {

class Words {
    Q_DECLARE_TR_FUNCTIONS(pw::gui::FieldText)

public:
    static QString notANumber() { return tr("“%1” is not a number. Type it like %2."); }
};

const char* baseUnit(Kind kind) {
    switch (kind) {
    case Kind::Length:
        return "mm";
    case Kind::Area:
        return "mm2";
    case Kind::Force:
        return "N";
    case Kind::Rate:
        return "N/mm";
    case Kind::Torque:
        return "N.mm";
    case Kind::Stress:
        return "MPa";
    case Kind::Angle:
        return "deg";
    case Kind::Temperature:
        return "degC";
    }
    return "";
}

const char* preferredUnit(Kind kind, System system) {
    const bool inch = system == System::Inch;
    switch (kind) {
    case Kind::Length:
        return inch ? "in" : "mm";
    case Kind::Area:
        return inch ? "in2" : "mm2";
    case Kind::Force:
        return inch ? "lbf" : "N";
    case Kind::Rate:
        return inch ? "lb/in" : "N/mm";
    case Kind::Torque:
        return inch ? "lb-ft" : "N.m";
    case Kind::Stress:
        return inch ? "ksi" : "MPa";
    case Kind::Angle:
        return "deg";
    case Kind::Temperature:
        return inch ? "F" : "C";
    }
    return "";
}

QString showBase(Kind kind, double base, System system) {
    switch (kind) {
    case Kind::Length:
        return QString::fromStdString(units::show(units::Length::fromBase(base), system));
    case Kind::Area:
        return QString::fromStdString(units::show(units::Area::fromBase(base), system));
    case Kind::Force:
        return QString::fromStdString(units::show(units::Force::fromBase(base), system));
    case Kind::Rate:
        return QString::fromStdString(units::show(units::Rate::fromBase(base), system));
    case Kind::Torque:
        return QString::fromStdString(units::show(units::Torque::fromBase(base), system));
    case Kind::Stress:
        return QString::fromStdString(units::show(units::Stress::fromBase(base), system));
    case Kind::Temperature:
        return QString::fromStdString(units::show(units::Temperature::fromBase(base), system));
    case Kind::Angle:
        break;
    }
    return {};
}

/// A number as the file has it, without the exponent and zeros that double brings.
QString plainNumber(double value) {
    return QString::number(value, 'g', 10);
}

std::optional<double> numberOf(const std::string& text) {
    bool ok = false;
    const double value = QLocale::c().toDouble(QString::fromStdString(text).trimmed(), &ok);
    return ok ? std::optional(value) : std::nullopt;
}

util::Problem notANumber(const QString& typed, const QString& example) {
    return {"", Words::notANumber().arg(typed, example).toStdString()};
}

util::Result<Tree> typedRange(const std::string& text, const QString& typed) {
    if (const auto one = numberOf(text))
        return Tree(*one);
    static const QRegularExpression kRange(QStringLiteral("^\\s*([0-9.]+)\\s*(?:-|–|to)\\s*([0-9.]+)\\s*$"));
    const auto match = kRange.match(QString::fromStdString(text));
    const auto low = numberOf(match.captured(1).toStdString()),
               high = numberOf(match.captured(2).toStdString());
    if (!match.hasMatch() || !low || !high)
        return notANumber(typed, Words::tr("0.12 or 0.12-0.20"));
    return Tree(Tree::List{Tree(*low), Tree(*high)});
}

util::Result<Tree> typedQuantity(std::string text, Kind kind, System system) {
    // Only a figure that can be read gets a unit put behind it; a problem then shows what was typed.
    if (const auto read = units::parseRangeBase(kind, text, preferredUnit(kind, system)); !read)
        return read.problem();
    if (units::hasUnit(kind, text))
        return Tree(std::move(text));
    if (kind == Kind::Length && system == System::Metric && text.find('/') != std::string::npos)
        return util::Problem{
            "", Words::tr("%1 of what? Fractions are inches here: type %1 in, or a figure in mm.")
                    .arg(QString::fromStdString(text))
                    .toStdString()};
    const std::string unit = preferredUnit(kind, system);
    // "190 ±5%": the unit belongs to the figure, not to the per cent.
    const auto plusMinus = text.find("±");
    if (text.find('%') != std::string::npos && plusMinus != std::string::npos) {
        std::string figure = text.substr(0, plusMinus);
        while (!figure.empty() && figure.back() == ' ')
            figure.pop_back();
        return Tree(figure + " " + unit + " " + text.substr(plusMinus));
    }
    return Tree(text + " " + unit);
}

} // namespace

std::optional<Kind> unitKind(FieldKind kind) {
    switch (kind) {
    case FieldKind::Length:
        return Kind::Length;
    case FieldKind::Force:
        return Kind::Force;
    case FieldKind::Rate:
        return Kind::Rate;
    case FieldKind::Stress:
        return Kind::Stress;
    case FieldKind::Angle:
        return Kind::Angle;
    case FieldKind::Area:
        return Kind::Area;
    case FieldKind::Temperature:
        return Kind::Temperature;
    default:
        return {};
    }
}

util::Result<std::string> withPoint(const QString& typed, const QLocale& locale) {
    QString text = typed.trimmed();
    text.replace(QChar(0xA0), QLatin1Char(' '));
    // A range as shownText says it, "650 N bis 725 N".
    QString between = Words::tr("%1 to %2");
    between.remove(QStringLiteral("%1")).remove(QStringLiteral("%2"));
    text.replace(between, QStringLiteral(" to "));
    if (locale.decimalPoint() != QLatin1String(","))
        return text.toStdString();
    static const QRegularExpression kEither(QStringLiteral("(?<![0-9.,])[0-9]{1,3}\\.[0-9]{3}(?![0-9.,])"));
    const auto either = kEither.match(text);
    if (either.hasMatch() && !either.captured(0).startsWith(QLatin1Char('0'))) {
        QString whole = either.captured(0), decimal = whole;
        whole.remove(QLatin1Char('.'));
        decimal.replace(QLatin1Char('.'), QLatin1Char(','));
        return util::Problem{"", Words::tr("%1 can be read in two ways. Type %2 or %3.")
                                     .arg(either.captured(0), whole, decimal)
                                     .toStdString()};
    }
    // Groups ("1.250,5") go, then the comma becomes the point.
    static const QRegularExpression kGrouped(QStringLiteral("[0-9]{1,3}(?:\\.[0-9]{3})+(?=,)"));
    auto match = kGrouped.match(text);
    while (match.hasMatch()) {
        QString digits = match.captured(0);
        digits.remove(QLatin1Char('.'));
        text.replace(match.capturedStart(), match.capturedLength(), digits);
        match = kGrouped.match(text, match.capturedStart() + digits.size());
    }
    static const QRegularExpression kComma(QStringLiteral("(?<=[0-9]),(?=[0-9])"));
    text.replace(kComma, QStringLiteral("."));
    return text.toStdString();
}

QString withLocalMark(const QString& text, const QLocale& locale) {
    if (locale.decimalPoint() != QLatin1String(","))
        return text;
    QString shown = text;
    // "1,690 lbf": the comma groups thousands, and a space does that everywhere.
    static const QRegularExpression kGroup(QStringLiteral("(?<=[0-9]),(?=[0-9]{3}(?![0-9]))"));
    shown.replace(kGroup, QStringLiteral("\u00a0"));
    static const QRegularExpression kPoint(
        QStringLiteral("(?<=[0-9])\\.(?=[0-9])|(?<![0-9A-Za-z])\\.(?=[0-9])"));
    shown.replace(kPoint, QStringLiteral(","));
    return shown;
}

QString local(const std::string& text) {
    return QString::fromStdString(text);
}

QString shortLength(double mm, System system) {
    const double rounded = std::round(mm * 100) / 100;
    if (system == System::Metric)
        return local(units::number(rounded == 0 ? 0 : rounded, 6));
    QString text = QString::fromStdString(units::inchFraction(units::Length::fromMm(std::abs(mm))));
    text.replace(QStringLiteral("\u00a0in"), QStringLiteral("″"))
        .replace(QStringLiteral(" in"), QStringLiteral("″"));
    const bool nothing = text.startsWith(QStringLiteral("0″"));
    return mm < 0 && !nothing ? QLatin1Char('-') + text : text;
}

QString shownText(const Tree* value, const Field& field, const QLocale& locale) {
    if (!value || value->isNull())
        return {};
    const bool isWords = field.kind == FieldKind::Text || field.kind == FieldKind::Choice ||
                         field.kind == FieldKind::OpenChoice || field.kind == FieldKind::Thread;
    const auto marked = [&](const QString& text) { return isWords ? text : withLocalMark(text, locale); };
    if (const auto* text = value->text())
        return marked(QString::fromStdString(*text));
    const auto kind = unitKind(field.kind);
    const QString unit = kind ? QLatin1Char(' ') + QLatin1String(baseUnit(*kind)) : QString();
    if (const auto* number = value->number())
        return marked(plainNumber(*number) + unit);
    if (const auto* yes = value->boolean())
        return *yes ? QStringLiteral("true") : QStringLiteral("false");
    if (const auto* items = value->items(); items && items->size() == 2)
        return Words::tr("%1 to %2")
            .arg(shownText(&(*items)[0], field, locale), shownText(&(*items)[1], field, locale));
    // A material of the user's own: its name.
    if (const auto* name = value->find("name"); name && name->text())
        return QString::fromStdString(*name->text());
    return {};
}

util::Result<Tree> typedValue(const QString& typed, const Field& field, System system,
                              const QLocale& locale) {
    if (typed.trimmed().isEmpty())
        return Tree();
    switch (field.kind) {
    case FieldKind::Text:
    case FieldKind::Choice:
    case FieldKind::OpenChoice:
    case FieldKind::Thread:
        return Tree(typed.trimmed().toStdString());
    case FieldKind::Flag:
        return Tree(typed.trimmed() == QLatin1String("true"));
    default:
        break;
    }
    auto text = withPoint(typed, locale);
    if (!text)
        return text.problem();
    if (const auto kind = unitKind(field.kind))
        return typedQuantity(*text, *kind, system);
    if (field.kind == FieldKind::NumberRange)
        return typedRange(*text, typed);
    const auto number = numberOf(*text);
    if (!number)
        return notANumber(typed, local(units::shownText(field.kind == FieldKind::Count ? "6" : "2.5")));
    if (field.kind == FieldKind::Count && (*number != std::floor(*number) || *number < 0 || *number > 1e6))
        return util::Problem{
            "", Words::tr("“%1” is not a whole number. Type it like 6.").arg(typed).toStdString()};
    return Tree(*number);
}

bool countsInInches(Kind kind, std::string_view text) {
    const auto has = [&](std::string_view part) { return text.find(part) != std::string_view::npos; };
    switch (kind) {
    case Kind::Length:
        return has("in") || has("\"") || has("″") || has("ft") || has("'") || has("thou") || has("ga");
    case Kind::Area:
        return has("in");
    case Kind::Force:
        return has("lb") || (has("ton") && !has("tonne")) || has("kip");
    case Kind::Rate:
        return has("lb") || has("in");
    case Kind::Torque:
        return has("lb");
    case Kind::Stress:
        return has("psi") || has("ksi");
    case Kind::Temperature:
        return has("F");
    case Kind::Angle:
        return false;
    }
    return false;
}

QString otherUnit(const Tree* value, const Field& field) {
    const auto kind = unitKind(field.kind);
    if (!kind || !value || *kind == Kind::Angle)
        return {};
    const auto* number = value->number();
    const auto* text = value->text();
    if (!text && !number)
        return {};
    const System other = text && countsInInches(*kind, *text) ? System::Metric : System::Inch;
    QString shown;
    if (number) {
        shown = showBase(*kind, *number, other);
    } else if (const auto one = units::parseBase(*kind, *text)) {
        shown = showBase(*kind, *one, other);
    } else if (const auto range = units::parseRangeBase(*kind, *text)) {
        QString low = showBase(*kind, range->low, other);
        const QString high = showBase(*kind, range->high, other);
        const auto cut = low.lastIndexOf(QChar(0xA0));
        if (cut > 0 && high.endsWith(low.mid(cut)))
            low.truncate(cut);
        shown = low + QChar(0x2013) + high;
    }
    if (*kind == Kind::Length && other == System::Inch)
        shown.replace(QStringLiteral("\u00a0in"), QStringLiteral("″"));
    return shown;
}

} // namespace pw::gui
