#pragma once

#include "core/units/format.h"

#include <optional>
#include <QByteArray>
#include <QString>

namespace pw::gui {

/// Preferences and the memory of the last session. Each is read and written at once; nothing of a job is
/// here.
namespace settings {

/// What was chosen, or what the desktop's country uses.
units::System unitSystem();
void setUnitSystem(units::System system);

enum class Colours { Follow, Light, Dark };
Colours colours();
void setColours(Colours colours);

/// Times the user's own font size: 1, 1.25, 1.5 or 2.
double textSize();
void setTextSize(double times);

QString lastFolder();
void setLastFolder(const QString& folder);

QByteArray windowGeometry();
void setWindowGeometry(const QByteArray& geometry);
QByteArray splitterState();
void setSplitterState(const QByteArray& state);

/// The lower strip: its height when open (design pixels, 0: never moved), and folded or not where the user
/// said so.
int stripHeight();
std::optional<bool> stripFolded();
void setStrip(int height, std::optional<bool> folded);

} // namespace settings
} // namespace pw::gui
