#!/usr/bin/env python3
"""Root moment of an endless cantilever plate under a force P: M = -K P at the clamped edge (N.mm per mm).

Writes cantilever_root_moment.csv. Thin plate, strip 0 < x < 1 clamped at x = 0 and free at x = 1, endless in y,
force at (c, 0), moment at (0, z). Fourier transform in y turns D lap lap w = P delta into
D (d2/dx2 - k2)2 w = P delta(x - c); clamped: w = w' = 0; free: w'' - nu k2 w = 0, w''' - (2 - nu) k2 w' = 0
(Timoshenko & Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed., eq. (112)-(113)). The problem is that of
T. J. Jaramillo, J. Appl. Mech. 17 (1950) 67-72. Column `published`: Roark's Formulas for Stress and Strain,
7th ed., art. 8.11 (beams of relatively great width), nu = 0.3, from memory. One figure of it lies 5 % from what
its neighbours and the series say, and is marked: ill remembered or a misprint.

Rows with ov and w: the mean of K over a patch at the free edge, ov deep and w wide, seen from its middle.
Standard library only.
"""
from math import cos, cosh, pi, sin, sinh

NU = 0.3
PUBLISHED = {1.0: "0.509 0.474 0.390 0.205 0.091 0.037", 0.75: "0.428 0.387 0.284 0.140 0.059 0.023",
             0.5: "0.370 0.302 0.196 0.076 0.029 0.011", 0.25: "0.332 0.172 0.073 0.022 0.007 0.003"}
Z = [0, 0.25, 0.5, 1, 1.5, 2]


def transformed(k, c):
    """-M / P at the root of the transformed strip."""
    s, co = sinh(k), cosh(k)
    # Two solutions that are clamped at x = 0, with derivatives, at x = 1: sinh kx - kx cosh kx, kx sinh kx.
    one = [s - k * co, -k**2 * s, -k**2 * s - k**3 * co, -2 * k**3 * co - k**4 * s]
    two = [k * s, k * s + k**2 * co, 2 * k**2 * co + k**3 * s, 3 * k**3 * s + k**4 * co]
    d = 1 - c
    s, co = sinh(k * d), cosh(k * d)
    # What a unit jump of w''' at c adds beyond it.
    add = [(k * d * co - s) / (2 * k**3), d * s / (2 * k), (s + k * d * co) / (2 * k),
           (2 * co + k * d * s) / 2]
    moment = lambda w: w[2] - NU * k**2 * w[0]
    shear = lambda w: w[3] - (2 - NU) * k**2 * w[1]
    a11, a12, a21, a22 = moment(one), moment(two), shear(one), shear(two)
    b1, b2 = -moment(add), -shear(add)
    return 2 * k**2 * (a11 * b2 - a21 * b1) / (a11 * a22 - a12 * a21)


def simpson(f, low, high, n):
    h = (high - low) / n
    return h / 3 * sum(f(low + i * h) * (1 if i in (0, n) else 4 if i % 2 else 2) for i in range(n + 1))


def point(c, z):
    return simpson(lambda k: transformed(max(k, 1e-3), c) * cos(k * z), 0, 40 / c, 4000) / pi


def patch(ov, w):
    """The mean over the width is the transform's sin(kw/2)/(kw/2); over the depth, Simpson."""
    def across(k):
        k = max(k, 1e-3)
        return simpson(lambda c: transformed(k, c), 1 - ov, 1, 8) / ov * sin(k * w / 2) / (k * w / 2)
    return simpson(across, 0, 40 / (1 - ov), 2000) / pi


if __name__ == "__main__":
    with open(__file__.replace(".py", ".csv"), "w") as out:
        out.write("c,z,ov,w,published,computed,note\n")
        for c, row in PUBLISHED.items():
            for z, published in zip(Z, row.split()):
                doubtful = "doubtful" if (c, z) == (0.75, 0.5) else ""
                out.write(f"{c},{z},,,{published},{point(c, z):.4f},{doubtful}\n")
        for ov, w in [(0.1, 0.1), (0.25, 0.5), (0.5, 0.5), (0.5, 2.0)]:
            out.write(f",,{ov},{w},,{patch(ov, w):.4f},\n")
