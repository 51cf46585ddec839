#include "app/cli/commands.h"
#include "app/gui/run.h"
#include "core/util/memory.h"

#include <iostream>

int main(int argc, char** argv) {
    pw::util::keepFreedMemory();
    return pw::cli::run(argc, argv, std::cout, std::cerr,
                        [&](const auto& job) { return pw::gui::run(argc, argv, job); });
}
