#include "app/cli/ahead.h"

#include <ostream>

namespace pw::cli {

void sayAhead(const job::Job& job, engine::WorkOn what, std::ostream& err, std::size_t pieces) {
    if (const std::string words = engine::foretold(engine::estimateWork(job, what, pieces)); !words.empty())
        err << words << std::endl;
}

} // namespace pw::cli
