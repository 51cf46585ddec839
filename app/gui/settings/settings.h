#pragma once

#include "core/units/format.h"

#include <optional>
#include <QByteArray>
#include <QString>
#include <QStringList>

namespace pw::gui {

/// Preferences, and apart from them, in a file of its own, the memory of the last session. Each is read and
/// written at once; nothing of a job is here.
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

/// Pictures and colours change at once instead of gliding.
bool lessMotion();
void setLessMotion(bool less);

/// What a drag and an arrow key snap to, mm.
double snapStepMm(units::System system);
void setSnapStepMm(units::System system, double mm);

/// What is printed on: what was chosen, or what the desktop's country uses.
enum class Paper { A4, Letter };
Paper paper();
void setPaper(Paper paper);

/// What counts where two pieces of the rack have the same verdict: a word of engine::wordOf(Prefer).
QString rackPreference();
void setRackPreference(const QString& word);

/// Code of the window's language; "en" when none was chosen.
QString language();
void setLanguage(const QString& code);

/// Racks outside their jobs' folders that the person has said may be read, by their full paths.
bool mayReadRack(const QString& file);
void allowRack(const QString& file);

// --- Session

void forgetSession();

/// True once, and never again for this user.
bool isFirstStart();

QString lastFolder();
void setLastFolder(const QString& folder);

/// Job files that were opened or saved, newest first, some more than are shown.
QStringList recentJobs();
void addRecentJob(const QString& file);

/// The rack file that was used last; empty for none.
QString lastRack();
void setLastRack(const QString& file);

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
