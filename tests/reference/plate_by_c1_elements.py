#!/usr/bin/python3
"""Small plates under ring loads by GetFEM, a general finite-element library, to hold our plate field to.

Writes plate_by_c1_elements.json. `--again [NAME...]` solves models once more (a smaller half without names), leaves the
file as it is and fails where its figures do not come out again; 77 when the library is missing.

Two formulations, neither of them ours (six- and seven-node shear triangles with tied shear strains):

  thin    Kirchhoff-Love plate: the deflection alone, in Hsieh-Clough-Tocher triangles, which join with their slopes
          (C1); the library's own Kirchhoff-Love brick; free edges are natural. Straight triangles: a round edge is a
          polygon that encloses the circle's area (the ends of a bar: a fine one). Its moment is the mean over each
          side: the corners of a polygon disturb the moment by about 1/n, and the disturbance has no mean. Two meshes,
          the second with half the side everywhere.
  thick   Reissner-Mindlin plate, shear factor 5/6: deflection and rotations all of fourth order on curved six-node
          triangles, nothing reduced, tied or added, which does not lock at these thicknesses. Two meshes.

Meshes: GetFEM's own mesher (signed distances), then its bisection where a round edge asks for it. Loads: points over
the rings (Gauss along the radius, even round the circle) carry the pressure; the ring round the bore takes the
balance, with a slant where the load is off the middle. Deflections count from the plane that fits the bearing ring
best. Three points hold the rigid motion; their reactions must be nothing (1e-6 of the load). Moments inside are means
over a small disc.

Signs: deflection along the stations' push, moment positive when it stretches the face they push on, which is
M = +D (w,xx + nu w,yy). Units mm, N, MPa. Each figure is [value, own error]. The error is what the finer mesh changed.
The value is that of the finer mesh; on straight triangles a third of the change is put on top (errors of second order).

GetFEM 5.4.2 (Debian 12: python3-getfem 5.4.2+dfsg1-3+b1), numpy 1.24.2. Y. Renard, K. Poulios, ACM Trans. Math.
Softw. 47 (2020) art. 4 (the library); R. W. Clough, J. L. Tocher, Proc. Conf. Matrix Methods in Struct. Mech.,
Wright-Patterson AFB 1965 (the element); both citations from memory.
"""
import json
import re
import sys
import time

try:
    import getfem as gf
except ImportError:
    print("Skipped: GetFEM is missing (python3-getfem).")
    sys.exit(77)
import numpy as np

gf.util_trace_level(0)
gf.util_warning_level(0)
E, NU = 200000.0, 0.3


def ring_of(n, radius, start=0.0):
    return [[radius * np.cos(np.radians(start + 360 * i / n)), radius * np.sin(np.radians(start + 360 * i / n))]
            for i in range(n)]


def on_holes(at, hole, land, force):
    """Holes of this radius, each with its land outside and its force."""
    return {"access": [[round(x, 10), round(y, 10), hole] for x, y in at],
            "stations": [[round(x, 10), round(y, 10), hole, land, force] for x, y in at]}


# rim: ["disc", radius], ["bar", length, width] with round ends, ["box", length, width]. Stations: x, y, inside,
# outside, force. bearing: inside (the bore), outside. Places: where the deflection is told; spots: where the moments
# are.
MODELS = {
    "annulus": {"rim": ["disc", 60], "bearing": [10, 18], "access": [], "extra": [],
                "stations": [[0, 0, 40, 48, 6000]],
                "places": [[58, 0], [0, 44], [-20, 20]], "spots": [[30, 0], [0, 50]]},
    "four stations": {"rim": ["disc", 70], "bearing": [10, 18], "extra": [],
                      **on_holes(ring_of(4, 45), 8, 14, 1500),
                      "places": [[68, 0], [48, 48], [0, 45 - 12]], "spots": [[25, 0], [30, 30], [20, 50]]},
    "six stations": {"rim": ["disc", 80], "bearing": [12, 21], "extra": [],
                     **on_holes(ring_of(6, 54), 9, 15, 1000),
                     "places": [[78, 0], [66, 38], [0, 30]], "spots": [[32, 0], [46, 26], [0, 70]]},
    "uneven": {"rim": ["disc", 75], "bearing": [11, 22], "extra": [[18, -52, 6]],
               **on_holes([ring_of(1, 46, 0)[0], ring_of(1, 44, 128)[0], ring_of(1, 48, 236)[0]], 8, 14, 2000),
               "places": [[73, 0], [-40, 60], [-36, -62], [50, 45]], "spots": [[26, 0], [0, 45], [-10, -35]]},
    "bar": {"rim": ["bar", 180, 56], "bearing": [10, 18], "extra": [],
            **on_holes([[62, 0], [-62, 0]], 8, 14, 2500),
            "places": [[88, 0], [62, 25], [0, 26]], "spots": [[35, 0], [25, 18], [62, 20]]},
    "square": {"rim": ["box", 130, 130], "bearing": [10, 18], "extra": [],
               **on_holes(ring_of(4, 60, 45), 8, 14, 1500),
               "places": [[63, 63], [63, 0], [42, 30]], "spots": [[22, 22], [35, 0], [50, 20]]},
}
# The holes are 12 to 24 mm across: `thin` is a fiftieth of the smallest, where Reissner's hole in bending stands within
# 0.7 % of Kirchhoff's (see independent_solver_test.cpp); `thick` is about half of a hole, a tenth of a plate.
THIN, THICK = 0.25, 8.0
SMALLER = ["annulus", "four stations", "bar"]
SPOT = 2.0  # radius of the disc over which a moment inside is the mean


class Shape:
    """A model's rim and its holes, numbered in the order of `round`: bore, access, extra."""

    def __init__(self, model):
        self.rim = model["rim"]
        holes = {"bore": [[0.0, 0.0, float(model["bearing"][0])]], "access": model["access"], "extra": model["extra"]}
        self.round = [(h, part) for part in holes for h in holes[part]]

    def mesh(self, h):
        kind, *size = self.rim
        corners = None
        if kind == "disc":
            body = gf.MesherObject("ball", [0, 0], size[0])
        elif kind == "box":
            x, y = size[0] / 2, size[1] / 2
            body = gf.MesherObject("rectangle", [-x, -y], [x, y])
            corners = np.array([[-x, x, x, -x], [-y, -y, y, y]], float)
        else:
            x, r = (size[0] - size[1]) / 2, size[1] / 2
            body = gf.MesherObject("union", gf.MesherObject("rectangle", [-x, -r], [x, r]),
                                   gf.MesherObject("ball", [-x, 0], r), gf.MesherObject("ball", [x, 0], r))
            corners = np.array([[-x, x, x, -x], [-r, -r, r, r]], float)
        for (x, y, r), _ in self.round:
            body = gf.MesherObject("set minus", body, gf.MesherObject("ball", [x, y], r))
        return gf.Mesh("generate", body, h, 1) if corners is None else gf.Mesh("generate", body, h, 1, corners)

    def nearest(self, p):
        """The edge a boundary point belongs to (a hole's number, -1 for the rim) and its foot there."""
        feet = {-1: self.on_rim(p)}
        for i, ((x, y, r), _) in enumerate(self.round):
            out = p - [x, y]
            feet[i] = np.array([x, y]) + out * r / np.hypot(*out)
        which = min(feet, key=lambda i: np.hypot(*(p - feet[i])))
        return which, feet[which]

    def on_rim(self, p):
        kind, *size = self.rim
        half = np.array(size) / 2
        if kind == "box":  # the nearer of its sides
            gap = half - np.abs(p)
            foot = p.astype(float).copy()
            foot[np.argmin(gap)] = np.copysign(half[np.argmin(gap)], p[np.argmin(gap)])
            return foot
        if kind == "disc":
            return p * size[0] / np.hypot(*p)
        straight = half[0] - half[1]
        if abs(p[0]) <= straight:
            return np.array([p[0], np.copysign(half[1], p[1])])
        end = np.array([np.copysign(straight, p[0]), 0])
        return end + (p - end) * half[1] / np.hypot(*(p - end))


def faces(mesh):
    """The outline: a row a side, numbers of its two end points."""
    return np.array([mesh.pid_in_faces(np.array([[c], [f]])) for c, f in mesh.outer_faces().T])


def points(mesh):
    return np.array(mesh.pts(mesh.pid()))


def onto_edges(shape, mesh):
    """Boundary points back to their round edge; who is where."""
    pts, where = points(mesh), {}
    for i in np.unique(faces(mesh)):
        where[i], pts[:, i] = shape.nearest(pts[:, i])
    mesh.set_pts(pts)
    return where


def graded(shape, h, sides, grade):
    """A mesh of size h in the open with at least so many sides round each hole, sizes growing by `grade` a mm."""
    mesh = shape.mesh(h)
    mesh.optimize_structure()
    for _ in range(20):
        onto_edges(shape, mesh)
        pts = points(mesh)
        corners = pts[:, mesh.pid_from_cvid()[0].reshape(-1, 3)]
        middle = corners.mean(axis=2)
        longest = max_side(corners)
        wanted = np.full(len(longest), 1.3 * h)
        for (x, y, r), _ in shape.round:
            gap = np.maximum(0, np.hypot(middle[0] - x, middle[1] - y) - r)
            wanted = np.minimum(wanted, 2 * np.pi * r / sides + grade * gap)
        coarse = mesh.cvid()[longest > 1.15 * wanted]
        if not len(coarse):
            break
        mesh.refine(coarse)
        mesh.optimize_structure()
    onto_edges(shape, mesh)
    return mesh


def max_side(corners):
    return np.max([np.hypot(*(corners[:, :, i] - corners[:, :, i - 1])) for i in range(3)], axis=0)


def same_area(shape, mesh):
    """Points of each round hole, and of a round rim, moved out so that the polygon encloses the circle's area."""
    where = onto_edges(shape, mesh)
    pts = points(mesh)
    circles = {i: h for i, (h, _) in enumerate(shape.round)}
    if shape.rim[0] == "disc":
        circles[-1] = [0.0, 0.0, float(shape.rim[1])]
    for which, (x, y, r) in circles.items():
        mine = [i for i in where if where[i] == which]
        angle = np.sort(np.arctan2(pts[1, mine] - y, pts[0, mine] - x))
        turn = np.diff(np.append(angle, angle[0] + 2 * np.pi))
        grow = np.sqrt(2 * np.pi / np.sin(turn).sum())
        pts[:, mine] = np.array([[x], [y]]) + (pts[:, mine] - [[x], [y]]) * grow
    mesh.set_pts(pts)
    return where


def curved(shape, mesh):
    """Six-node triangles, the middle of an edge's side put on the edge."""
    onto_edges(shape, mesh)
    pts = points(mesh)
    outline = {tuple(sorted(side)) for side in faces(mesh)}
    corners = mesh.pid_from_cvid()[0].reshape(-1, 3)

    def middle(a, b):
        half = (pts[:, a] + pts[:, b]) / 2
        return shape.nearest(half)[1] if tuple(sorted((a, b))) in outline else half

    # GT_PK(2,2): corner, middle, corner, middle, middle, corner, row by row.
    six = np.array([[pts[:, a], middle(a, b), pts[:, b], middle(a, c), middle(b, c), pts[:, c]] for a, b, c in corners])
    result = gf.Mesh("empty", 2)
    result.add_convex(gf.GeoTrans("GT_PK(2,2)"), np.ascontiguousarray(six.transpose(2, 1, 0)))
    return result


def ring_points(x, y, inside, outside):
    """Points and areas that integrate over a ring."""
    node, weight = np.polynomial.legendre.leggauss(8)
    r = (inside + outside) / 2 + (outside - inside) / 2 * node
    turn = (np.arange(144) + 0.5) * 2 * np.pi / 144
    area = np.repeat(weight * (outside - inside) / 2 * r * 2 * np.pi / len(turn), len(turn))
    return np.array([x + np.outer(r, np.cos(turn)).ravel(), y + np.outer(r, np.sin(turn)).ravel()]), area


def motions(p):
    return np.vstack([np.ones(p.shape[1]), p])


class Plate:
    """One mesh, solved: asks its formulation for values, and knows nothing of it."""

    def __init__(self, model, mesh, mf, md, t):
        self.model, self.mesh, self.mf, self.md, self.t = model, mesh, mf, md, t
        force = np.zeros(mf.nbdof())
        load = np.zeros(3)
        for x, y, inside, outside, total in model["stations"]:
            p, area = ring_points(x, y, inside, outside)
            push = total * area / area.sum()
            force += self.at(p).tmult(push)
            load += motions(p) @ push
        p, area = ring_points(0, 0, *model["bearing"])
        slant = np.linalg.solve(motions(p) * area @ motions(p).T, load)
        pressure = slant @ motions(p)
        assert pressure.min() > 0, "the bearing would have to pull"
        force -= self.at(p).tmult(pressure * area)
        md.add_explicit_rhs("w", force)
        r = (model["bearing"][0] + model["bearing"][1]) / 2
        md.add_variable("pins", 3)
        md.add_constraint_with_multipliers("w", "pins", self.at(np.array(ring_of(3, r, 17)).T), np.zeros(3))
        md.solve()
        self.w = md.variable("w")
        total = sum(s[4] for s in model["stations"])
        self.pins = np.abs(md.variable("pins")).max() / total
        self.energy = force @ self.w / 2
        over = self.at(p).mult(self.w)
        self.plane = np.linalg.solve(motions(p) * area @ motions(p).T, motions(p) @ (area * over))

    def at(self, p):
        return gf.asm_interpolation_matrix(self.mf, np.ascontiguousarray(p))

    def deflection(self, p):
        p = np.array(p, float).T
        return self.at(p).mult(self.w) - self.plane @ motions(p)

    def moments_of(self, k):
        """Mx, My, Mxy from the slopes' gradient."""
        d = E * self.t**3 / (12 * (1 - NU**2))
        return d * np.array([k[0, 0] + NU * k[1, 1], k[1, 1] + NU * k[0, 0], (1 - NU) * (k[0, 1] + k[1, 0]) / 2])

    def spot(self, x, y):
        """The mean over a disc: by Gauss's theorem from the slopes round its edge."""
        turn = (np.arange(144) + 0.5) * 2 * np.pi / 144
        normal = np.array([np.cos(turn), np.sin(turn)])
        slopes = self.slopes(np.array([[x], [y]]) + SPOT * normal)
        return self.moments_of(slopes @ normal.T * 2 / (SPOT * len(turn)))


class Thin(Plate):
    def slopes(self, p):
        """By differences of the deflection: this version of the library gives a composite element's derivatives at
        points wrongly (at corners they are not the unknowns they should be)."""
        step = 0.01
        ahead, behind = (np.array([self.at(p + s * u).mult(self.w) for u in np.eye(2)[:, :, None]])
                         for s in (step, -step))
        return (ahead - behind) / (2 * step)

    def __init__(self, shape, model, mesh, t):
        self.where = same_area(shape, mesh)
        self.shape = shape
        mf = gf.MeshFem(mesh, 1)
        mf.set_fem(gf.Fem("FEM_HCT_TRIANGLE"))
        mim = gf.MeshIm(mesh, gf.Integ("IM_HCT_COMPOSITE(IM_TRIANGLE(4))"))
        md = gf.Model("real")
        md.add_fem_variable("w", mf)
        md.add_initialized_data("D", E * t**3 / (12 * (1 - NU**2)))
        md.add_initialized_data("nu", NU)
        md.add_Kirchhoff_Love_plate_brick(mim, "w", "D", "nu")
        super().__init__(model, mesh, mf, md, t)

    def edge(self, which):
        """The largest moment along a hole's edge, from means over the polygon's sides: what the slope along the side
        gains from end to end, times E t^3 / 12, since nothing bends across a free edge. The scatter from side to side
        is taken out by eight waves round the hole."""
        pts, (x, y, _) = points(self.mesh), self.shape.round[which][0]
        ends = np.array([s for s in faces(self.mesh) if self.where[s[0]] == which and self.where[s[1]] == which]).T
        a, b = pts[:, ends[0]], pts[:, ends[1]]
        side = b - a
        gain = self.corner_slopes(b) - self.corner_slopes(a)
        mean = E * self.t**3 / 12 * (gain * side).sum(axis=0) / (side**2).sum(axis=0)
        middle = np.arctan2(*((a + b) / 2 - [[x], [y]])[::-1])

        def waves(angle):
            return np.array([np.cos(0 * angle)] + [f(k * angle) for k in range(1, 9) for f in (np.cos, np.sin)]).T
        smooth = np.linalg.lstsq(waves(middle), mean, rcond=None)[0]
        return np.abs(waves(np.linspace(0, 2 * np.pi, 721)) @ smooth).max()

    def corner_slopes(self, p):
        """At corners of the mesh they are unknowns themselves: the second and third of the corner's."""
        nodes = self.mf.basic_dof_nodes()
        mine = [np.flatnonzero(np.hypot(nodes[0] - x, nodes[1] - y) < 1e-7) for x, y in p.T]
        assert all(len(m) == 3 for m in mine)
        return self.w[np.array(mine)[:, 1:]].T


class Thick(Plate):
    def slopes(self, p):
        return np.reshape(self.md.interpolation("b", np.ascontiguousarray(p), self.mesh), (-1, 2)).T

    def __init__(self, shape, model, mesh, t):
        self.shape = shape
        where = onto_edges(shape, mesh)
        self.sides = [(s, where[s[0]]) for s in faces(mesh) if where[s[0]] == where[s[1]]]
        pts = points(mesh)
        six = curved(shape, mesh)
        mf, mfb = gf.MeshFem(six, 1), gf.MeshFem(six, 2)
        mf.set_fem(gf.Fem("FEM_PK(2,4)"))
        mfb.set_fem(gf.Fem("FEM_PK(2,4)"))
        mim = gf.MeshIm(six, gf.Integ("IM_TRIANGLE(10)"))
        md = gf.Model("real")
        md.add_fem_variable("w", mf)
        md.add_fem_variable("b", mfb)
        d = E * t**3 / (12 * (1 - NU**2))
        md.add_initialized_data("D", d)
        md.add_initialized_data("nu", NU)
        md.add_initialized_data("S", 5 / 6 * t * E / (2 * (1 + NU)))
        md.add_linear_term(mim, "D*((1-nu)*(Sym(Grad_b):Sym(Grad_Test_b))+nu*Trace(Grad_b)*Trace(Grad_Test_b))"
                                "+S*(Grad_w-b).(Grad_Test_w-Test_b)")
        self.corners = pts
        super().__init__(model, six, mf, md, t)

    def edge(self, which):
        most = 0
        x, y, r = self.shape.round[which][0]
        samples = []
        for (i, j), belongs in self.sides:
            if belongs != which:
                continue
            a, b = self.corners[:, i], self.corners[:, j]
            m = self.shape.nearest((a + b) / 2)[1]
            for s in (np.arange(9) + 0.5) / 9:
                samples.append((1 - s) * (1 - 2 * s) * a + s * (2 * s - 1) * b + 4 * s * (1 - s) * m)
        p = np.array(samples).T
        out = p - [[x], [y]]
        p = p + 1e-7 * out
        n = out / np.hypot(*out)
        m = self.moments_of(np.reshape(self.md.interpolation("Grad_b", p, self.mesh), (-1, 2, 2)).transpose(1, 2, 0))
        return np.abs(m[0] * n[1]**2 + m[1] * n[0]**2 - 2 * m[2] * n[0] * n[1]).max()


def figures(plate):
    model, shape = plate.model, plate.shape
    out = {"energy": plate.energy}
    for i, w in enumerate(plate.deflection(model["places"])):
        out[f"deflection {i + 1}"] = w
    for i, (x, y) in enumerate(model["spots"]):
        for name, m in zip(("Mx", "My", "Mxy"), plate.spot(x, y)):
            out[f"{name} {i + 1}"] = m
    for i, (_, part) in enumerate(shape.round):
        name = f"edge {part}" if part == "bore" else f"edge {part} {1 + [p for _, p in shape.round[:i]].count(part)}"
        out[name] = plate.edge(i)
    return out


def solve(model):
    shape = Shape(model)
    result = {}
    for name, kind, t, sides in [("thin", Thin, THIN, (36, 72)), ("thick", Thick, THICK, (12, 18))]:
        plates = []
        start = time.time()
        for n in sides:
            if name == "thin" and plates:
                onto_edges(shape, mesh)
                mesh.refine(mesh.cvid())
                mesh.optimize_structure()
            else:
                mesh = graded(shape, 6.0 if name == "thin" else 108.0 / n, n, 0.35 if name == "thin" else 0.5)
            plate = kind(shape, model, mesh, t)
            plates.append(figures(plate))  # now: the next mesh is this one, refined
            print(f"    {name}: {mesh.nbcvs()} triangles, {plate.md.nbdof()} unknowns,"
                  f" {time.time() - start:.1f} s, pins {plate.pins:.1e}", flush=True)
        coarse, fine = plates
        # Half the side leaves a quarter of the error of straight sides and of the elements' moments.
        rest = 1 / 3 if name == "thin" else 0
        result[name] = {key: [fine[key] + rest * (fine[key] - coarse[key]), abs(fine[key] - coarse[key])]
                        for key in fine}
        worst = max(result[name].items(), key=lambda f: f[1][1] / scale_of(f[0], result[name]))
        print(f"    changed most: {worst[0]}, {100 * worst[1][1] / scale_of(worst[0], result[name]):.2f} %", flush=True)
        assert plate.pins < 1e-6
    return result


def scale_of(key, found):
    """What a figure's error is to be seen beside: itself, or for a moment inside the largest one inside."""
    if key[0] == "M":
        return max(abs(v[0]) for k, v in found.items() if k[0] == "M")
    return abs(found[key][0])


def rounded(found):
    """To be kept: what is nothing but rounding is nothing."""
    def digits(key, value, n):
        return float(f"{value:.{n}g}") if abs(value) > 1e-7 * scale_of(key, found) else 0.0
    return {key: [digits(key, value, 6), digits(key, error, 2)] for key, (value, error) in found.items()}


KEPT = __file__.replace(".py", ".json")


def write():
    kept = {"about": "Made by plate_by_c1_elements.py, which says how. Units mm, N, MPa. Figures: [value, own error]. "
                     "thin: Kirchhoff, C1 elements. thick: Reissner-Mindlin, fourth order.",
            "library": "GetFEM " + gf.getfem_env("version"), "E": E, "nu": NU, "thin": THIN, "thick": THICK,
            "spot": SPOT, "models": {}}
    for name, model in MODELS.items():
        print(name)
        kept["models"][name] = {"inputs": model, **{kind: rounded(f) for kind, f in solve(model).items()}}
    text = json.dumps(kept, indent=1)
    # A pair, a place, a station on one line.
    text = re.sub(r"\[\s+([^\[\]{}]*?)\s+\]", lambda m: "[" + re.sub(r"\s*\n\s*", " ", m[1]) + "]", text)
    with open(KEPT, "w") as out:
        out.write(text + "\n")


def again(names):
    """Whether the kept figures come out again: within their own error (another version may mesh differently) or
    1e-5 of their scale."""
    with open(KEPT) as file:
        kept = json.load(file)
    differing = 0
    for name in names:
        print(name)
        assert kept["models"][name]["inputs"] == json.loads(json.dumps(MODELS[name])), "inputs differ"
        assert (kept["thin"], kept["thick"], kept["spot"], kept["E"], kept["nu"]) == (THIN, THICK, SPOT, E, NU)
        for kind, found in solve(MODELS[name]).items():
            before = kept["models"][name][kind]
            assert before.keys() == found.keys(), "figures missing"
            worst = 0
            for key, (value, _) in found.items():
                off = abs(value - before[key][0])
                worst = max(worst, off / scale_of(key, before))
                if off > max(before[key][1], 1e-5 * scale_of(key, before)):
                    print(f"    DIFFERS {kind} {key}: kept {before[key]}, now {value:.6g}")
                    differing += 1
            print(f"    {kind}: the kept figures within {100 * worst:.4f} %")
    return differing == 0


if __name__ == "__main__":
    if sys.argv[1:2] == ["--again"]:
        sys.exit(0 if again(sys.argv[2:] or SMALLER) else 1)
    write()
