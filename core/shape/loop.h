#pragma once

#include <optional>
#include <vector>

/// Flat shapes as plain values. Lengths in mm, angles in radians, x to the right, y up, counter-clockwise
/// positive.
namespace pw::shape {

struct Point {
    double x = 0, y = 0;
    bool operator==(const Point&) const = default;
    friend Point operator+(Point a, Point b) { return {a.x + b.x, a.y + b.y}; }
    friend Point operator-(Point a, Point b) { return {a.x - b.x, a.y - b.y}; }
    friend Point operator*(Point a, double f) { return {a.x * f, a.y * f}; }
    friend Point operator*(double f, Point a) { return a * f; }
};

double dot(Point a, Point b);
double cross(Point a, Point b);
double norm(Point a);
double distance(Point a, Point b);
Point polar(double radius, double angle);
Point rotated(Point p, double angle);

struct Box {
    Point low, high;
    double width() const { return high.x - low.x; }
    double height() const { return high.y - low.y; }
};

struct Circle {
    Point centre;
    double radius = 0;
    bool operator==(const Circle&) const = default;
};

/// A corner and the side that starts at it. bulge = tan(quarter of the side's included angle),
/// counter-clockwise positive; 0 is a straight side.
struct Vertex {
    Point at;
    double bulge = 0;
    bool operator==(const Vertex&) const = default;
};

/// One straight line or arc.
struct Side {
    Point from, to;
    double bulge = 0;

    bool isArc() const { return bulge != 0; }
    bool isCurved() const; ///< an arc that can be told from its chord
    double sweep() const;  ///< signed included angle, radians
    Circle circle() const; ///< of an arc
    double length() const;
    Point pointAt(double t) const;   ///< t in [0, 1] along the side
    Point tangentAt(double t) const; ///< unit, in the direction of travel
    double distanceTo(Point p) const;
    Point nearestTo(Point p) const;
    Box bounds() const;
    Side reversed() const { return {to, from, -bulge}; }
};

/// Points where two sides meet (at most two; touching counts once; overlapping sides give none).
std::vector<Point> crossings(const Side& a, const Side& b);

/// A closed curve of lines and arcs. A full circle is two vertices with bulge 1 (or -1 when clockwise).
struct Loop {
    std::vector<Vertex> vertices;
    bool operator==(const Loop&) const = default;

    std::size_t size() const { return vertices.size(); }
    Side side(std::size_t i) const {
        const Vertex& a = vertices[i];
        return {a.at, vertices[(i + 1) % vertices.size()].at, a.bulge};
    }
};

Loop circleLoop(Point centre, double radius);
Loop rectangleLoop(double length, double width, double cornerRadius = 0);
/// Square ends, or round ones of half the width. Length (overall) along x.
Loop barLoop(double length, double width, bool roundEnds);
/// Overall length (end to end) and width; the long axis turned by `turn` from x.
Loop slotLoop(Point centre, double length, double width, double turn);

std::optional<Circle> asCircle(const Loop& loop);
double signedArea(const Loop& loop); ///< positive when counter-clockwise
double perimeter(const Loop& loop);
Point centroid(const Loop& loop);
Box bounds(const Loop& loop);
bool contains(const Loop& loop, Point p);
double distanceTo(const Loop& loop, Point p);
Point nearestOn(const Loop& loop, Point p);
Loop reversed(const Loop& loop);
Loop moved(const Loop& loop, Point by);
Loop turned(const Loop& loop, double angle); ///< about the origin
Loop mirrored(const Loop& loop,
              double axis); ///< in the line through the origin at this angle; keeps its sense
bool crossesItself(const Loop& loop);
bool crosses(const Loop& a, const Loop& b); ///< their curves meet
/// Least distance between the two curves; 0 when they cross.
double clearance(const Loop& a, const Loop& b);

} // namespace pw::shape
