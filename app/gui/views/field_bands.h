#pragma once

#include "core/plate/mesh.h"

#include <Eigen/Core>
#include <QPolygonF>
#include <vector>

namespace pw::gui {

/// Turn and mirror that carry the sector to one of its images.
struct SectorImage {
    bool mirror = false;
    double axis = 0; ///< of the mirror
    double turn = 0; ///< after it
    QPointF of(double x, double y) const;
};
std::vector<SectorImage> sectorImages(const plate::Sector& sector);

/// The steel where a value lies in [low, high): polygons in plate millimetres (y up), mirror images included.
struct Band {
    std::vector<QPolygonF> polygons;
};

/// Cuts the field of one sector into flat bands between the given levels (ascending; one band less than
/// levels), and mirrors them into the whole plate. Values outside the levels fall into the first or last
/// band.
std::vector<Band> fieldBands(const plate::Mesh& mesh, const plate::Sector& sector,
                             const Eigen::VectorXd& values, const std::vector<double>& levels);

/// Where the largest value is, with its images: node places in mm, the one in the sector first.
std::vector<shape::Point> imagesOf(shape::Point p, const plate::Sector& sector);

} // namespace pw::gui
