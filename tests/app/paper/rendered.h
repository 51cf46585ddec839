#pragma once

#include "tests/support/run.h"

#include <algorithm>
#include <sstream>
#include <stdexcept>
#include <string>
#include <vector>

/// A page of a PDF as poppler's pdftoppm draws it, for measuring with a picture's dots.
namespace pw::testing {

/// 254 dots an inch: ten a millimetre.
inline constexpr int kDotsPerMm = 10;

class RenderedPage {
public:
    RenderedPage(const std::string& pdf, int page) {
        const Ran ran = run("pdftoppm -r 254 -gray -f " + std::to_string(page) + " -l " +
                            std::to_string(page) + " '" + pdf + "'");
        std::istringstream head(ran.output.substr(0, 64));
        std::string kind;
        int most = 0;
        head >> kind >> m_width >> m_height >> most;
        if (ran.status != 0 || kind != "P5")
            throw std::runtime_error("pdftoppm cannot draw " + pdf);
        m_dots = ran.output.substr(static_cast<std::size_t>(head.tellg()) + 1);
    }
    int width() const { return m_width; }
    int height() const { return m_height; }

    /// 0 white to 1 black, of the dot at this place.
    double ink(int column, int row) const {
        const auto at = static_cast<std::size_t>(row) * static_cast<std::size_t>(m_width) +
                        static_cast<std::size_t>(column);
        return 1 - static_cast<unsigned char>(m_dots.at(at)) / 255.0;
    }

    /// Middles (mm from the left) of the dark runs on the level line y, between x0 and x1.
    std::vector<double> across(double y, double x0, double x1) const {
        return runs([&](int i) { return ink(i, dot(y)); }, x0, x1);
    }
    /// The same on an upright line, mm from the top.
    std::vector<double> down(double x, double y0, double y1) const {
        return runs([&](int i) { return ink(dot(x), i); }, y0, y1);
    }
    /// All ink within a box, in dots.
    double inkIn(double x0, double y0, double x1, double y1) const {
        double sum = 0;
        for (int row = dot(y0); row < std::min(dot(y1), m_height); ++row)
            for (int column = dot(x0); column < std::min(dot(x1), m_width); ++column)
                sum += ink(column, row);
        return sum;
    }

private:
    static int dot(double mm) { return static_cast<int>(mm * kDotsPerMm); }

    template<class Ink>
    static std::vector<double> runs(const Ink& inkAt, double from, double to) {
        std::vector<double> middles;
        double sum = 0, moment = 0;
        for (int i = dot(from); i <= dot(to); ++i) {
            const double dark = inkAt(i) > 0.2 ? inkAt(i) : 0;
            sum += dark;
            moment += dark * (i + 0.5);
            if (sum > 0 && dark == 0) {
                middles.push_back(moment / sum / kDotsPerMm);
                sum = moment = 0;
            }
        }
        return middles;
    }

    int m_width = 0, m_height = 0;
    std::string m_dots;
};

} // namespace pw::testing
