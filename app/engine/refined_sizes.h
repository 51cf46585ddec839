#pragma once

#include "geometry/mesh/size_field.h"

#include <Eigen/Core>
#include <memory>

namespace pw::engine {

/// Sizes that would spread the error evenly: a triangle with more than its share of `error` (one a triangle,
/// squares in the energy norm) gets smaller. `reduce`: how much smaller all get beside that.
std::shared_ptr<const mesh::BackgroundSizes> refinedSizes(const plate::Mesh& mesh,
                                                          const Eigen::VectorXd& error, double reduce);

} // namespace pw::engine
