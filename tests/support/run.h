#pragma once

#include <cstdio>
#include <filesystem>
#include <fstream>
#include <stdexcept>
#include <string>
#include <sys/wait.h>
#include <unistd.h>

/// Files and outside readers for tests of what the program writes.
namespace pw::testing {

/// A file that is there as long as this is.
class FileForTest {
public:
    FileForTest(const std::string& ending, const std::string& content)
        : m_path(std::filesystem::temp_directory_path() /
                 ("pw_" + std::to_string(getpid()) + "_" + std::to_string(s_count++) + ending)) {
        std::ofstream(m_path, std::ios::binary) << content;
    }
    ~FileForTest() { std::filesystem::remove(m_path); }
    FileForTest(const FileForTest&) = delete;
    FileForTest& operator=(const FileForTest&) = delete;
    std::string path() const { return m_path.string(); }

private:
    static inline int s_count = 0;
    std::filesystem::path m_path;
};

struct Ran {
    int status = -1;
    std::string output; ///< standard output
};

/// Runs a command of the shell to its end.
inline Ran run(const std::string& command) {
    FILE* pipe = popen(command.c_str(), "r");
    if (!pipe)
        throw std::runtime_error("cannot run " + command);
    Ran ran;
    char buffer[4096];
    for (std::size_t n; (n = fread(buffer, 1, sizeof buffer, pipe)) > 0;)
        ran.output.append(buffer, n);
    const int status = pclose(pipe);
    ran.status = WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    return ran;
}

} // namespace pw::testing
