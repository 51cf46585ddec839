#include "app/gui/run.h"

#include "app/engine/check.h"
#include "app/engine/ladder.h"
#include "app/engine/mend.h"
#include "app/engine/propose.h"
#include "app/engine/tool.h"
#include "app/gui/document/journal.h"
#include "app/gui/settings/languages.h"
#include "app/gui/settings/settings.h"
#include "app/gui/widgets/roles.h"
#include "app/gui/window.h"

#include <QApplication>
#include <QIcon>
#include <QScreen>

namespace pw::gui {

namespace {

/// Is there room for the window's frame as well? On a small screen its lower edge would lie below the
/// screen's.
bool hasRoomBeside(const QWidget& window) {
    constexpr int kFrame = 48;
    const QSize screen = window.screen()->availableSize();
    return screen.width() >= window.width() && screen.height() >= window.height() + kFrame;
}

} // namespace

int run(int argc, char** argv, std::optional<std::filesystem::path> job) {
    QApplication application(argc, argv);
    QApplication::setStyle(QStringLiteral("Fusion"));
    QApplication::setApplicationName(QStringLiteral("platewright"));
    QApplication::setApplicationDisplayName(QStringLiteral("Platewright"));
    QApplication::setDesktopFileName(QStringLiteral("platewright"));
    // Built in, so that a program that is not installed has it too.
    QIcon icon;
    for (const int size : {16, 32, 48, 128})
        icon.addFile(QStringLiteral(":/icons/platewright_%1.png").arg(size), QSize(size, size));
    QApplication::setWindowIcon(icon);

    Engine engine;
    engine.check = [](const job::Job& j, const engine::CheckOptions& options) {
        return engine::check(j, options);
    };
    engine.mend = engine::mends;
    engine.ladder = [](const job::Job& j, const engine::CheckOptions& options) {
        return engine::ladder(j, options);
    };
    engine.tryTool = engine::tryTool;
    engine.propose = engine::propose;
    settings::speakChosenLanguage();
    teachRoles();
    Window window(engine);
    if (settings::windowGeometry().isEmpty() && !hasRoomBeside(window))
        window.showMaximized();
    else
        window.show();
    window.keepIn(Journal::standardFolder());
    if (job)
        window.openFile(*job);
    else if (settings::isFirstStart())
        window.welcome();
    return QApplication::exec();
}

} // namespace pw::gui
