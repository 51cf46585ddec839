#pragma once

#include <QImage>
#include <QString>

namespace pw::gui {

/// The drawings of the help, in the colours, language and size of now: "stack", "plan", "order", "verdicts",
/// "pull", "stand". Empty for any other name.
/// @param ratio pixels of the screen a pixel
QImage helpScene(const QString& name, double ratio);

} // namespace pw::gui
