#include "app/engine/model_cache.h"

namespace pw::engine {

ModelCache::Model ModelCache::find(const shape::Region& region, const plate::Sector& sector,
                                   double fineness) const {
    const std::lock_guard lock(m_mutex);
    for (const Entry& entry : m_entries)
        if (entry.fineness == fineness && entry.model->sector() == sector && entry.region == region)
            return entry.model;
    return nullptr;
}

void ModelCache::keep(const shape::Region& region, double fineness, Model model) {
    const std::lock_guard lock(m_mutex);
    m_entries.push_back({region, fineness, std::move(model)});
}

} // namespace pw::engine
