#pragma once

#include "core/jobfile/tree.h"
#include "core/stations/pin_layout.h"
#include "core/units/format.h"

#include <QString>
#include <QStringList>

/// What the caliper readings of a job come to, in words.
namespace pw::gui {

/// From the readings, the count and the pin of the job; the count may follow from the readings. Kept until
/// any of them changes, since the window asks often.
util::Result<stations::PinLayout> pinLayoutOf(const job::Job& job);
/// How many pins the job has, or the readings speak of.
int pinCountOf(const job::Job& job);

/// Sentences: the circle and how far from even, how well the readings agree, which one does not, what else to
/// read.
QStringList pinWords(const stations::PinLayout& layout, const job::Job& job, units::System system);
/// What is wrong with one figure; empty when it agrees. `over`: the figure over the pins.
QString pinRemark(const stations::PinLayout& layout, const job::PinReading& reading, bool over,
                  units::System system);

/// Even within what the cutting can do: worth taking as one circle.
bool isEvenEnough(const stations::PinLayout& layout, const job::Job& job);

/// Puts the result where the rest of the program takes it from; turned so that pin 1 stays at the job's first
/// angle.
void takeEvenCircle(jobfile::Tree& tree, const stations::PinLayout& layout, const job::Job& job,
                    units::System system);
void takePinPlaces(jobfile::Tree& tree, const stations::PinLayout& layout, const job::Job& job,
                   units::System system);

} // namespace pw::gui
