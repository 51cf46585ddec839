#pragma once

#include "app/gui/models/fields.h"
#include "core/material/grades.h"
#include "core/material/material.h"

#include <algorithm>
#include <QCoreApplication>

/// How the fields of each group are asked: one function a group, the files by what a person looks at.
namespace pw::gui {

using jobfile::Tree;

class FieldWords {
    Q_DECLARE_TR_FUNCTIONS(pw::gui::Fields)

public:
    using Choices = std::vector<std::pair<QString, QString>>;

    static Choices outlines() {
        return {{"disc", tr("Disc")},
                {"bar", tr("Bar")},
                {"rectangle", tr("Rectangle or square")},
                {"polygon", tr("Polygon, corner by corner")}};
    }
    /// The usual ones, as far as the tables know them; any other name can be typed.
    static Choices known(std::initializer_list<const char*> usual, const std::vector<std::string>& names) {
        Choices choices;
        for (const char* name : usual)
            if (std::find(names.begin(), names.end(), name) != names.end())
                choices.emplace_back(QString::fromUtf8(name), inWords(name));
        return choices;
    }
    static QString inWords(std::string_view name) {
        if (name == "unknown scrap")
            return tr("Unknown scrap");
        if (name == "cast iron")
            return tr("Cast iron");
        if (name == "cast aluminium")
            return tr("Cast aluminium");
        if (name == "bronze")
            return tr("Bronze");
        return QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size()));
    }
    static Choices steels() {
        return known({"unknown scrap", "S235", "S275", "S355", "E295", "A36", "A572-50", "1018", "1045",
                      "4140", "cast iron"},
                     material::names());
    }
    static Choices materials() {
        return known({"unknown scrap", "S235", "S355", "A36", "1018", "1045", "4140", "cast iron"},
                     material::names());
    }
    static Choices hubMetals() {
        return known(
            {"cast iron", "ductile iron", "1045", "S355", "cast aluminium", "bronze", "unknown scrap"},
            material::names());
    }
    static Choices conditions() {
        return {
            {"good", tr("good")}, {"worn", tr("worn")}, {"rusty", tr("rusty")}, {"damaged", tr("damaged")}};
    }
    static Choices grades(const std::vector<std::string>& names) {
        Choices choices;
        for (const auto& name : names)
            choices.emplace_back(QString::fromStdString(name), QString::fromStdString(name));
        return choices;
    }

    static FieldGroup squeezed(const Tree& tree);
    static FieldGroup stations(const Tree& tree);
    static FieldGroup load(const Tree& tree);
    static FieldGroup hub(const Tree& tree);
    static FieldGroup grip(const Tree& tree);
    static FieldGroup steel();
    static FieldGroup piece();
    static FieldGroup holes();
    static FieldGroup centre(const Tree& tree);
    static FieldGroup ram(const Tree& tree);
    static FieldGroup back();
    static FieldGroup heat();
    static FieldGroup cutting();
    static FieldGroup wanted();
    static SpringFields spring(const Tree& tree, std::size_t index);
};

} // namespace pw::gui
