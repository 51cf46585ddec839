#pragma once

#include <filesystem>
#include <functional>
#include <QString>
#include <vector>

class QWidget;

namespace pw::gui {

/// What the window asks of the person, apart from the job's figures. Tests answer instead.
struct Questions {
    enum class Unsaved { Save, Discard, Cancel };
    std::function<Unsaved(QWidget*, const QString& name)> unsaved;
    std::function<bool(QWidget*, const QString& title, const QString& words, const QString& yes)> really;
    std::function<std::filesystem::path(QWidget*)> openPath;
    std::function<std::filesystem::path(QWidget*, const QString& title, const QString& proposal,
                                        const QString& filter)>
        savePath;
    std::function<std::vector<std::filesystem::path>(QWidget*)> openPaths; ///< other jobs; none is an answer
    /// One line of text; empty when it was called off.
    std::function<QString(QWidget*, const QString& title, const QString& words, const QString& proposal)>
        text;
    std::function<std::filesystem::path(QWidget*)> openRackPath; ///< a rack file

    /// Qt's own dialogs.
    static Questions dialogs();
};

} // namespace pw::gui
