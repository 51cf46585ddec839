#pragma once

#include <string>

namespace pw::testing {

/// A process that edits, keeps and saves a job for as long as it is left alive, for killing it at any moment.
/// Every state of the job has one number in two places ("job 12", bore "12 mm"). Prints "kept 12" or "saved
/// 12" once that is done, never before.
int editForever(int argc, char** argv, const std::string& jobFile, const std::string& journalFolder,
                int firstNumber, unsigned seed);

/// The number of a whole state; -1 when the two places differ or are missing.
int stateOf(const std::string& jobFile);

} // namespace pw::testing
