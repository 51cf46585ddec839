#include "core/jobfile/known_names.h"

#include "core/material/grades.h"
#include "core/material/material.h"
#include "core/thread/thread.h"

namespace pw::jobfile {

namespace {

template<class T>
std::optional<util::Problem> troubleOf(const util::Result<T>& found) {
    return found ? std::nullopt : std::optional(found.problem());
}

/// Looks the grade up for the thread, or for one of each standard when the thread is not known.
template<class Find>
std::optional<util::Problem> gradeTrouble(Find find, std::string_view name, std::string_view threadText) {
    if (const auto thread = thread::parse(threadText))
        return troubleOf(find(name, *thread));
    std::optional<util::Problem> trouble;
    for (const std::string_view standIn : {"M16", "5/8-11 UNC"}) {
        trouble = troubleOf(find(name, *thread::parse(standIn)));
        if (!trouble)
            break;
    }
    return trouble;
}

} // namespace

std::optional<util::Problem> threadTrouble(std::string_view text) {
    return troubleOf(thread::parse(text));
}

std::optional<util::Problem> materialTrouble(const job::Material& material) {
    return troubleOf(material::resolve(material));
}

std::optional<util::Problem> screwGradeTrouble(std::string_view name, std::string_view thread) {
    return gradeTrouble(material::findScrewGrade, name, thread);
}

std::optional<util::Problem> nutGradeTrouble(std::string_view name, std::string_view thread) {
    return gradeTrouble(material::findNutGrade, name, thread);
}

} // namespace pw::jobfile
