#include "app/gui/samples.h"

#include "core/jobfile/read.h"

#include <QCoreApplication>
#include <QDir>

namespace pw::gui {

std::vector<Sample> samples() {
    std::vector<Sample> found;
    QDir at(QCoreApplication::applicationDirPath());
    QStringList places{at.filePath(QStringLiteral("../share/platewright/samples"))};
    for (int up = 0; up < 5; ++up) {
        places << at.filePath(QStringLiteral("samples"));
        if (!at.cdUp())
            break;
    }
    for (const QString& place : places) {
        const QDir folder(place);
        const auto files = folder.entryList({QStringLiteral("*.plate.json")}, QDir::Files, QDir::Name);
        for (const QString& file : files) {
            const QString path = folder.filePath(file);
            QString title = file.chopped(11);
            if (const auto tree = jobfile::loadTree(path.toStdString()))
                if (const auto* text = tree->find("title"); text && text->text())
                    title = QString::fromStdString(*text->text());
            found.push_back({title, path});
        }
        if (!found.empty())
            break;
    }
    return found;
}

} // namespace pw::gui
