#include "app/gui/models/field_words.h"

namespace pw::gui {

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
            FieldWords::centre(tree),   FieldWords::ram(tree),      FieldWords::back(),
            FieldWords::heat(),         FieldWords::cutting(),      FieldWords::wanted()};
}

SpringFields springFields(const Tree& tree, std::size_t index) {
    return FieldWords::spring(tree, index);
}

std::string groupOf(const Tree& tree, const std::string& path) {
    if (path.starts_with("springs") || path.starts_with("load"))
        return "load";
    for (const auto& group : fieldGroups(tree))
        for (const auto& field : group.fields)
            if (path.starts_with(field.path) || field.path.starts_with(path))
                return group.id;
    if (path.starts_with("stations"))
        return "stations";
    if (path.starts_with("hub"))
        return "hub";
    if (path.starts_with("screw") || path.starts_with("centre"))
        return "centre";
    if (path.starts_with("plate"))
        return "steel";
    return {};
}

} // namespace pw::gui
