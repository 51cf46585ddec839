#pragma once

#include "app/engine/report.h"

#include <string>

namespace pw::engine {

/// Every figure of the report as "name = value", one a line, in an order that depends on nothing but what is
/// there, checks by their id: two reports are held against each other with diff. Figures to six places, units
/// as in the JSON report; what depends on the machine (times) is left out.
std::string toText(const Report& report);

} // namespace pw::engine
