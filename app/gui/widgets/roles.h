#pragma once

namespace pw::gui {

/// Tells screen readers what the program's own widgets are: text, a drawing. Once, before any window.
void teachRoles();

} // namespace pw::gui
