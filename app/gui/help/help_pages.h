#pragma once

#include <QString>
#include <vector>

namespace pw::gui {

struct HelpPage {
    QString name;  ///< "first_job"
    QString title; ///< in the language of now
};

/// The pages of the help in their order.
std::vector<HelpPage> helpPages();

/// A page as HTML in the language of now, English where it has none; links are `figure:PATH`, `view:NAME`,
/// `new:KIND`, `page:NAME`, `verdict:WORD`, pictures `scene:NAME` and `sketch:PATH`. Empty for an unknown
/// name.
QString helpPage(const QString& name);

/// The mark of a check (by its id) on the page of checks, or of a field (by its path) on the page of
/// measuring, as "page#mark".
QString helpOnCheck(const std::string& id);
QString helpOnField(const std::string& path);

} // namespace pw::gui
