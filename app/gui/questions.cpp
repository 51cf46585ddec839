#include "app/gui/questions.h"

#include "app/gui/settings/settings.h"
#include "app/gui/widgets/look.h"
#include "app/gui/window.h"

#include <QCoreApplication>
#include <QFileDialog>
#include <QInputDialog>
#include <QMessageBox>
#include <QPushButton>

namespace pw::gui {

namespace {

Questions::Unsaved askUnsaved(QWidget* parent, const QString& name) {
    QMessageBox box(QMessageBox::NoIcon, Window::tr("Not saved"),
                    Window::tr("%1 has changes that are not saved.").arg(name), QMessageBox::NoButton,
                    parent);
    dress(box);
    box.setTextFormat(Qt::PlainText); // a file's name is no HTML
    auto* save = box.addButton(Window::tr("Save"), QMessageBox::AcceptRole);
    auto* discard = box.addButton(Window::tr("Throw the changes away"), QMessageBox::DestructiveRole);
    auto* cancel = box.addButton(Window::tr("Back to the job"), QMessageBox::RejectRole);
    box.setDefaultButton(save);
    box.setEscapeButton(cancel);
    box.exec();
    if (box.clickedButton() == save)
        return Questions::Unsaved::Save;
    return box.clickedButton() == discard ? Questions::Unsaved::Discard : Questions::Unsaved::Cancel;
}

bool askReally(QWidget* parent, const QString& title, const QString& words, const QString& yes) {
    QMessageBox box(QMessageBox::NoIcon, title, words, QMessageBox::NoButton, parent);
    dress(box);
    box.setTextFormat(Qt::PlainText);
    auto* go = box.addButton(yes, QMessageBox::AcceptRole);
    auto* stay = box.addButton(Window::tr("Do not write"), QMessageBox::RejectRole);
    box.setDefaultButton(stay);
    box.setEscapeButton(stay);
    box.exec();
    return box.clickedButton() == go;
}

std::filesystem::path askOpenPath(QWidget* parent) {
    const QString file = QFileDialog::getOpenFileName(
        parent, QCoreApplication::translate("pw::gui::Window", "Open a job"), settings::lastFolder(),
        QCoreApplication::translate("pw::gui::Window", "Jobs (*.plate.json);;All files (*)"));
    return file.toStdString();
}

std::filesystem::path askSavePath(QWidget* parent, const QString& title, const QString& proposal,
                                  const QString& filter) {
    return QFileDialog::getSaveFileName(parent, title, proposal, filter).toStdString();
}

std::vector<std::filesystem::path> askOpenPaths(QWidget* parent) {
    std::vector<std::filesystem::path> files;
    for (const QString& file : QFileDialog::getOpenFileNames(
             parent, Window::tr("Other plates on the same piece"), settings::lastFolder(),
             Window::tr("Jobs (*.plate.json);;All files (*)")))
        files.emplace_back(file.toStdString());
    return files;
}

QString askText(QWidget* parent, const QString& title, const QString& words, const QString& proposal) {
    bool taken = false;
    const QString text =
        QInputDialog::getText(parent, title, words, QLineEdit::Normal, proposal, &taken).trimmed();
    return taken ? text : QString();
}

std::filesystem::path askOpenRackPath(QWidget* parent) {
    return QFileDialog::getOpenFileName(
               parent, QCoreApplication::translate("pw::gui::Window", "Open a rack"), settings::lastFolder(),
               QCoreApplication::translate("pw::gui::Window", "Racks (*.json);;All files (*)"))
        .toStdString();
}

} // namespace

Questions Questions::dialogs() {
    return {askUnsaved, askReally, askOpenPath, askSavePath, askOpenPaths, askText, askOpenRackPath};
}

} // namespace pw::gui
