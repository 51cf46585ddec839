#include "app/gui/models/field_words.h"

namespace pw::gui {

Tree Field::valueIn(const Tree& tree) const {
    if (get)
        return get(tree);
    const Tree* value = tree.at(path);
    return value ? *value : Tree();
}

Tree Field::with(const Tree& tree, const Tree& value) const {
    Tree after = tree;
    if (put)
        put(after, value);
    else if (value.isNull())
        after.erase(path);
    else
        after.set(path, value);
    return after;
}

std::string textAt(const Tree& tree, std::string_view path) {
    const Tree* at = tree.at(path);
    const std::string* text = at ? at->text() : nullptr;
    return text ? *text : std::string();
}

bool isPull(const Tree& tree) {
    return textAt(tree, "work") == "pull";
}

LoadSource loadSource(const Tree& tree) {
    return tree.at("load.total") ? LoadSource::Given : LoadSource::Springs;
}

std::vector<FieldGroup> fieldGroups(const Tree& tree) {
    return {FieldWords::squeezed(tree), FieldWords::stations(tree), FieldWords::load(tree),
            FieldWords::hub(tree),      FieldWords::grip(tree),     FieldWords::steel(),
            FieldWords::piece(),        FieldWords::holes(),        FieldWords::centre(tree),
            FieldWords::ram(tree),      FieldWords::back(),         FieldWords::heat(),
            FieldWords::cutting(),      FieldWords::wanted()};
}

SpringFields springFields(const Tree& tree, std::size_t index) {
    return FieldWords::spring(tree, index);
}

std::string groupOf(const Tree& tree, const std::string& path) {
    if (path.starts_with("load.share"))
        return "stations"; // asked station by station
    if (path.starts_with("springs") || path.starts_with("load"))
        return "load";
    for (const auto& group : fieldGroups(tree))
        for (const auto& field : group.fields)
            if (path.starts_with(field.path) || field.path.starts_with(path))
                return group.id;
    if (path.starts_with("plate.holes") || path.starts_with("keep_clear"))
        return "holes";
    if (path.starts_with("stations"))
        return "stations";
    if (path.starts_with("hub"))
        return "hub";
    if (path.starts_with("screw") || path.starts_with("centre"))
        return "centre";
    if (path.starts_with("piece"))
        return "piece";
    if (path.starts_with("plate"))
        return "steel";
    return {};
}

} // namespace pw::gui
