#pragma once

#include "app/gui/views/bent_shape.h"
#include "app/gui/views/camera.h"

#include <cstdint>
#include <QColor>
#include <QImage>
#include <QSize>
#include <vector>

namespace pw::gui {

/// What is seen in each pixel of the bent plate. Nearest wins, pixel by pixel, so that nothing has to be
/// sorted and bands and hatch are exact at any bend.
class BentRaster {
public:
    enum Surface : std::uint8_t { Nothing, Top, Under, RimWall, HoleWall };

    /// `thickness` in mm to scale; `times` by which the deflection is drawn larger.
    void draw(const BentShape& shape, const Camera& camera, double thickness, double times, QSize size);

    QSize size() const { return m_size; }
    Surface surfaceAt(int x, int y) const { return static_cast<Surface>(m_surface[index(x, y)]); }
    float depthAt(int x, int y) const { return m_depth[index(x, y)]; }
    float valueAt(int x, int y) const { return m_value[index(x, y)]; }

    struct Paint {
        std::vector<QRgb> bands; ///< from no stress to the top
        double top = 1;          ///< of the scale
        double yield = 0;        ///< past it the steel is hatched; 0: not
        QRgb hatch = 0, rimWall = 0, holeWall = 0, line = 0;
        double lineWidth = 1.5, hatchPitch = 6, hatchWidth = 1.6; ///< px of the finished picture
    };
    /// The picture, `over` times smaller than what was drawn; see-through where there is no steel.
    QImage image(const Paint& paint, int over) const;

private:
    struct Vertex {
        float x = 0, y = 0, depth = 0, value = 0;
    };
    std::size_t index(int x, int y) const {
        return static_cast<std::size_t>(y) * static_cast<std::size_t>(m_size.width()) +
               static_cast<std::size_t>(x);
    }
    void fill(const Vertex& a, const Vertex& b, const Vertex& c, Surface surface);
    QRgb colourAt(const Paint& paint, int x, int y, int over, int reach) const;

    QSize m_size;
    std::vector<float> m_depth, m_value;
    std::vector<std::uint8_t> m_surface;
};

} // namespace pw::gui
