#include "app/cli/commands.h"
#include "app/gui/run.h"

#include <iostream>

int main(int argc, char** argv) {
    return pw::cli::run(argc, argv, std::cout, std::cerr,
                        [&](const auto& job) { return pw::gui::run(argc, argv, job); });
}
