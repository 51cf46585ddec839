#pragma once

#include "app/engine/report.h"
#include "app/paper/sheet_data.h"

#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace pw::paper {

struct PaperChoices {
    std::optional<PaperSize> size; ///< Letter when the job is in inches, else A4
    bool anyway = false;           ///< write a verdict that may not be made, marked across every page
    std::string date;              ///< as printed; today when empty
    std::string file;              ///< name of the job file, as printed on the sheet
    std::optional<Offcut> offcut;  ///< drawn round the plate on the sheet
};

/// Everything is said in this language for as long as it lives: what is checked as well as what is written.
/// To be made before the check, from the main thread. The mark of decimals is the language's.
class InLanguage {
public:
    explicit InLanguage(const std::string& code);
    ~InLanguage();
    InLanguage(const InLanguage&) = delete;
    InLanguage& operator=(const InLanguage&) = delete;
    bool known() const { return m_known; }
    static std::vector<std::string> all(); ///< codes, "en" first

private:
    struct Before;
    std::unique_ptr<Before> m_before;
    bool m_known = false;
};

/// PDF of the plate at full size on as many sheets as it takes, whole or not at all; says how to print it,
/// line by line. Call from the main thread: type needs a QGuiApplication, and one without a screen is made
/// when there is none yet.
util::Result<std::vector<std::string>> writeTemplate(const job::Job& job, const engine::Report& report,
                                                     const std::filesystem::path& file,
                                                     const PaperChoices& choices);

/// PDF of the shop sheet: drawing, figures, checks, order of work. Else as above.
util::Result<std::vector<std::string>> writeShopSheet(const job::Job& job, const engine::Report& report,
                                                      const std::filesystem::path& file,
                                                      const PaperChoices& choices);

} // namespace pw::paper
