#include "tests/app/gui/support/live_edit.h"

#include "app/gui/document/document.h"
#include "app/gui/document/job_keeper.h"
#include "core/jobfile/read.h"
#include "tests/app/gui/support/fake_engine.h"

#include <cstdio>
#include <QCoreApplication>
#include <random>

namespace pw::testing {

int editForever(int argc, char** argv, const std::string& jobFile, const std::string& journalFolder,
                int firstNumber, unsigned seed) {
    const QCoreApplication application(argc, argv);
    std::mt19937 random(seed);
    gui::Document document;
    gui::JobKeeper keeper(document, journalFolder);
    keeper.setHeldTest([] { return false; });
    if (!document.open(jobFile))
        return 1;
    std::puts("ready");
    std::fflush(stdout);
    for (int n = firstNumber;; ++n) {
        jobfile::Tree tree = document.tree();
        tree.set("title", "job " + std::to_string(n));
        tree.set("plate.bore", std::to_string(n) + " mm");
        document.replace(std::move(tree), "Edit");
        const bool save = random() % 3 == 0;
        if (!(save ? document.save().ok() : keeper.flush()))
            return 1;
        std::printf("%s %d\n", save ? "saved" : "kept", n);
        std::fflush(stdout);
        QCoreApplication::processEvents();
    }
}

int stateOf(const std::string& jobFile) {
    const auto tree = jobfile::loadTree(jobFile);
    if (!tree)
        return -1;
    const auto* title = tree->at("title");
    const auto* bore = tree->at("plate.bore");
    if (!title || !bore || !title->text() || !bore->text() || !title->text()->starts_with("job "))
        return -1;
    const int n = std::atoi(title->text()->c_str() + 4);
    return *bore->text() == std::to_string(n) + " mm" ? n : -1;
}

} // namespace pw::testing
