"""Reads the path of a torch out of cut files of any kind, so that they can be held against each other.

    cut_read.py FILE...    one line of JSON a file (.ngc, .dxf, .svg); status 0 when nothing is wrong, 1 when something is

Each file gives "paths", in the order of the file: layer, length, area and the places at equal steps along it, all in mm
with y up. Lead-in, cut and lead-out that go on from each other are joined to one path, under the name of the cut.
A program is run (rs274_run.py), a drawing read by ezdxf, an SVG by Python's own XML reader after SVG 1.1, chapter 8.
"""
import json
import math
import re
import sys
import xml.etree.ElementTree as xml

import ezdxf
from ezdxf.math import bulge_to_arc

import rs274_run

STEPS = 96
SVG = "{http://www.w3.org/2000/svg}"
SVG_CLASSES = {"outside", "inside", "lead", "mark", "drill"}


def line(start, end):
    return {"from": list(start), "to": list(end), "sweep": 0.0}


def arc(start, end, centre, sweep):
    return {"from": list(start), "to": list(end), "centre": list(centre), "sweep": sweep}


def length_of(move):
    if move["sweep"] == 0:
        return math.dist(move["from"], move["to"])
    return math.dist(move["from"], move["centre"]) * abs(move["sweep"])


def at(move, t):
    if move["sweep"] == 0:
        return [a + t * (b - a) for a, b in zip(move["from"], move["to"])]
    c = move["centre"]
    angle = math.atan2(move["from"][1] - c[1], move["from"][0] - c[0]) + t * move["sweep"]
    radius = math.dist(move["from"], c)
    return [c[0] + radius * math.cos(angle), c[1] + radius * math.sin(angle)]


def sampled(layer, moves):
    total = sum(length_of(m) for m in moves)
    places, k, gone = [], 0, 0.0
    for step in range(STEPS + 1):
        wanted = total * step / STEPS
        while k < len(moves) - 1 and gone + length_of(moves[k]) < wanted:
            gone += length_of(moves[k])
            k += 1
        length = length_of(moves[k])
        places.append(at(moves[k], min(1.0, (wanted - gone) / length) if length > 0 else 0.0))
    return {"layer": layer, "length": total, "places": places}


def joined(paths):
    """[(layer, moves)] with leads hung on to the cut between them."""
    out = []
    for layer, moves in paths:
        goes_on = out and math.dist(out[-1][1][-1]["to"], moves[0]["from"]) < 1e-6 and "LEAD" in (
            layer.upper(), out[-1][2])
        if goes_on:
            out[-1][1].extend(moves)
            out[-1][2] = layer.upper()
            if layer.upper() != "LEAD":
                out[-1][0] = layer
        else:
            out.append([layer, list(moves), layer.upper()])
    return [sampled(layer, moves) for layer, moves, _ in out]


def from_ngc(raw):
    problems, table = rs274_run.run(raw)
    if problems:
        return problems, {}
    return [], {"paths": [sampled("burn", burn["moves"]) for burn in table.burns],
                "turns": [[m["sweep"] for m in burn["moves"]] for burn in table.burns],
                "dwells": [b["dwell"] for b in table.burns], "feeds": [b["feed"] for b in table.burns],
                "travel": sum(math.dist(a, b) for a, b in table.rapids), "comments": table.comments,
                "stops": table.stops}


def bulged(start, end, bulge):
    if bulge == 0:
        return line(start, end)
    centre = bulge_to_arc(start, end, bulge)[0]
    return arc(start, end, (centre.x, centre.y), 4 * math.atan(bulge))


def from_dxf(raw):
    document = ezdxf.read(__import__("io").StringIO(raw.decode("ascii")))
    unit = 25.4 if document.header.get("$INSUNITS", 0) == 1 else 1.0
    if document.dxfversion == "AC1009":
        words = " ".join(e.dxf.text for e in document.modelspace() if e.dxftype() == "TEXT")
        unit = 25.4 if "Units: inch" in words else 1.0
    paths, points = [], []
    for entity in document.modelspace():
        kind = entity.dxftype()
        if kind == "LWPOLYLINE":
            corners, closed = list(entity.get_points("xyb")), entity.closed
        elif kind == "POLYLINE":
            corners = [(v.dxf.location.x, v.dxf.location.y, v.dxf.get("bulge", 0.0)) for v in entity.vertices]
            closed = entity.is_closed
        elif kind == "POINT":
            points.append([entity.dxf.location.x * unit, entity.dxf.location.y * unit])
            continue
        else:
            continue
        corners = [(x * unit, y * unit, b) for x, y, b in corners]
        ends = corners[1:] + (corners[:1] if closed else [])
        paths.append((entity.dxf.layer, [bulged(p[:2], q[:2], p[2]) for p, q in zip(corners, ends)]))
    return [], {"paths": joined(p for p in paths if p[0] != "DRILL"), "points": points,
                "drill": [sampled(*p) for p in paths if p[0] == "DRILL"]}


def svg_arc(start, radii, turn, large, positive, end):
    """Centre of an elliptical arc with equal radii: SVG 1.1, F.6.5; y downwards."""
    if radii[0] != radii[1] or turn != 0 or large != 0:
        raise ValueError("an arc of an ellipse, or of more than half a circle")
    chord = math.dist(start, end)
    radius = max(radii[0], chord / 2)  # F.6.6: too small a radius is made to fit
    if radius > radii[0] + 1e-5:
        raise ValueError("the radius does not reach from end to end")
    away = math.sqrt(max(0.0, radius ** 2 - chord ** 2 / 4)) * (1 if positive else -1)
    middle = [(a + b) / 2 for a, b in zip(start, end)]
    along = [(b - a) / chord for a, b in zip(start, end)]
    centre = (middle[0] - along[1] * away, middle[1] + along[0] * away)
    sweep = 2 * math.asin(min(1.0, chord / 2 / radius)) * (1 if positive else -1)
    return centre, sweep


def svg_moves(d):
    words = d.split()
    moves, k, start, here = [], 0, None, None

    def take(count):
        nonlocal k
        k += count
        return [float(w) for w in words[k - count:k]]

    while k < len(words):
        word = words[k]
        k += 1
        if word == "M" and start is None:
            start = here = take(2)
        elif word == "L":
            end = take(2)
            moves.append(line(here, end))
            here = end
        elif word == "A":
            rx, ry, turn, large, positive, x, y = take(7)
            centre, sweep = svg_arc(here, (rx, ry), turn, large, positive, (x, y))
            moves.append(arc(here, (x, y), centre, sweep))
            here = [x, y]
        elif word == "Z" and k == len(words):
            if math.dist(here, start) > 1e-4:
                moves.append(line(here, start))
        else:
            raise ValueError(f"path word {word}")
    return moves


def from_svg(raw):
    root = xml.fromstring(raw)
    problems = [] if root.tag == SVG + "svg" else ["no svg"]
    size = [re.fullmatch(r"([\d.]+)(mm|in)", root.get(side)) for side in ("width", "height")]
    box = [float(v) for v in root.get("viewBox").split()]
    unit = 25.4 if size[0].group(2) == "in" else 1.0
    if [float(s.group(1)) for s in size] != box[2:] or box[:2] != [0, 0] or size[0].group(2) != size[1].group(2):
        problems.append("not at true size")

    def mm(place):
        x, y = place
        if not (-1e-9 <= x <= box[2] + 1e-9 and -1e-9 <= y <= box[3] + 1e-9):
            problems.append("a line off the page")
        return [x * unit, (box[3] - y) * unit]

    paths, drill, texts = [], [], []
    for element in root:
        if element.tag == SVG + "path":
            if element.get("class") not in SVG_CLASSES or element.get("fill") != "none":
                problems.append(f"class {element.get('class')}, fill {element.get('fill')}")
            moves = []
            for m in svg_moves(element.get("d")):
                up = {"from": mm(m["from"]), "to": mm(m["to"]), "sweep": -m["sweep"]}
                if "centre" in m:
                    up["centre"] = [m["centre"][0] * unit, (box[3] - m["centre"][1]) * unit]
                moves.append(up)
            layer = {"outside": "CUT_OUTSIDE", "inside": "CUT_INSIDE", "lead": "LEAD"}.get(element.get("class"))
            (paths if layer else drill).append((layer or element.get("class"), moves))
        elif element.tag == SVG + "text":
            mm((float(element.get("x")), float(element.get("y"))))
            texts.append([element.get("class"), element.text])
        elif element.tag not in (SVG + "title", SVG + "desc"):
            problems.append(f"element {element.tag}")
    return problems, {"paths": joined(paths), "drill": [sampled(*p) for p in drill], "texts": texts,
                      "title": root.findtext(SVG + "title"), "desc": root.findtext(SVG + "desc"),
                      "page": [box[2] * unit, box[3] * unit]}


def main(files):
    status = 0
    for name in files:
        with open(name, "rb") as file:
            raw = file.read()
        reader = {"ngc": from_ngc, "dxf": from_dxf, "svg": from_svg}[name.rsplit(".", 1)[1]]
        try:
            problems, report = reader(raw)
        except Exception as error:  # whatever it is, the file is not one to hand out
            problems, report = [f"{type(error).__name__}: {error}"], {}
        print(json.dumps({"problems": problems, **report}))
        status |= bool(problems)
    return int(status)


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
