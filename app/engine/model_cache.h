#pragma once

#include "core/plate/model.h"
#include "core/shape/region.h"

#include <memory>
#include <mutex>
#include <vector>

namespace pw::engine {

/// First meshes of plates already seen, with all of them that depends on neither thickness, steel nor load:
/// shared by the elastic field, the bending past yield and the hung station of one check, and by all rungs of
/// a ladder. Safe from several threads.
class ModelCache {
public:
    using Model = std::shared_ptr<const plate::PlateModel>;

    /// None when it was not seen.
    Model find(const shape::Region& region, const plate::Sector& sector, double fineness) const;
    void keep(const shape::Region& region, double fineness, Model model);

private:
    struct Entry {
        shape::Region region;
        double fineness = 0;
        Model model;
    };
    mutable std::mutex m_mutex;
    std::vector<Entry> m_entries;
};

} // namespace pw::engine
