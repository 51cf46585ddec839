#pragma once

#include "app/gui/models/fields.h"
#include "core/units/format.h"
#include "core/units/parse.h"

#include <optional>
#include <QLocale>
#include <QString>

/// Between what a field shows and what the tree keeps. The window follows the desktop's decimal mark; the
/// tree always has a point.
namespace pw::gui {

/// A text with the desktop's decimal mark, as the file has it. A mark that could be either a decimal or a
/// group
/// ("1.250" where a comma is usual) is a problem and asks.
util::Result<std::string> withPoint(const QString& typed, const QLocale& locale);
/// The other way.
QString withLocalMark(const QString& text, const QLocale& locale);

/// What a field shows of a value: as typed; a bare number gets the base unit that it counts in.
QString shownText(const jobfile::Tree* value, const Field& field, const QLocale& locale);

/// What a person typed, for the tree. A bare figure gets the unit of the preference; empty text is null.
util::Result<jobfile::Tree> typedValue(const QString& typed, const Field& field, units::System system,
                                       const QLocale& locale);

/// The same figure in the other unit system, short ("5.118″"); empty when there is none to show.
QString otherUnit(const jobfile::Tree* value, const Field& field);

/// What the engine or the formatter says, for a widget. Its figures have the reader's decimal mark already
/// (core/util/say.h); that of a text out of the job is put in by withLocalMark.
QString local(const std::string& text);

/// A length without its unit where that is mm: "12.5", "1 1/16″".
QString shortLength(double mm, units::System system);

/// Does the text count in inches, pounds and the like?
bool countsInInches(units::Kind kind, std::string_view text);

std::optional<units::Kind> unitKind(FieldKind kind);

} // namespace pw::gui
