#pragma once

#include <QString>
#include <vector>

namespace pw::gui {

struct Sample {
    QString title, file;
};

/// The sample jobs that come with the program: beside it, or in the source tree when it runs from there.
std::vector<Sample> samples();

} // namespace pw::gui
