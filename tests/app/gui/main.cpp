#include "app/gui/widgets/look.h"
#include "app/tongues/tongues.h"
#include "tests/app/gui/support/grab.h"
#include "tests/app/gui/support/live_edit.h"

#include <cstdlib>
#include <gtest/gtest.h>
#include <QApplication>
#include <QTemporaryDir>
#include <string_view>

/// The tests of the window, without a screen. `--grab FOLDER [PART OF A NAME [LANGUAGE]]` writes pictures
/// of the window's states instead, for looking at.
int main(int argc, char** argv) {
    if (argc == 6 && std::string_view(argv[1]) == "--edit-forever") // to be killed by a test
        return pw::testing::editForever(argc, argv, argv[2], argv[3], std::atoi(argv[4]),
                                        static_cast<unsigned>(std::strtoul(argv[5], nullptr, 10)));
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    // Preferences of whoever runs the tests stay as they are.
    QTemporaryDir settings;
    qputenv("XDG_CONFIG_HOME", settings.path().toUtf8());
    qputenv("XDG_DATA_HOME", settings.path().toUtf8());
    qputenv("LC_ALL", "C.UTF-8");
    QApplication application(argc, argv);
    QApplication::setStyle(QStringLiteral("Fusion"));
    QLocale::setDefault(QLocale::c());
    pw::gui::Look::now().setLessMotion(true);
    if (argc > 4 && std::string_view(argv[1]) == "--grab")
        pw::tongues::speak(QString::fromLocal8Bit(argv[4]));
    if (argc >= 3 && std::string_view(argv[1]) == "--grab")
        return pw::testing::grabWindows(QString::fromLocal8Bit(argv[2]), argc > 3 ? argv[3] : "");
    ::testing::InitGoogleTest(&argc, argv);
    return RUN_ALL_TESTS();
}
