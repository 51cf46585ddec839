"""Runs a cutting program and says where the torch went, after the RS274/NGC report: T. Kramer, F. Proctor, E. Messina,
The NIST RS274/NGC Interpreter - Version 3, NISTIR 6556 (2000). Sections are given beside each rule; what of them was
seen and what is from memory stands in tests/reference/gcode_facts.json.

    rs274_run.py FILE...              one line of JSON a file; status 0 when nothing is wrong, 1 when something is
    rs274_run.py --controls FILE...   spoils a sound file in many ways and demands that each is noticed

Knows only the words a cutting table needs; any other word is an error, not passed over. Besides the report's rules
it demands what a torch does: lit where it stands, a dwell before it moves, never lit on a rapid, off at both ends.
All lengths in the result are mm.
"""
import json
import math
import re
import sys

MM = {20: 25.4, 21: 1.0}
RADIUS_TOLERANCE = {20: 0.0002, 21: 0.002}  # 3.5.3.2, in the unit in force
G_GROUPS = {0: 1, 1: 1, 2: 1, 3: 1, 4: 0, 17: 2, 20: 6, 21: 6, 40: 7, 90: 3, 94: 5}  # table 4
M_GROUPS = {0: 4, 2: 4, 30: 4, 3: 7, 5: 7}
LONGEST_LINE = 256  # 3.3, from memory
WORD = re.compile(r"([A-Z])([+-]?(?:\d+\.?\d*|\.\d+))")


class Wrong(Exception):
    pass


def split_line(line):
    """Comments and the words outside them (3.3.4: a comment may not hold another)."""
    comments, words, inside = [], "", None
    for sign in line:
        if inside is not None:
            if sign == "(":
                raise Wrong("a comment inside a comment")
            if sign == ")":
                comments.append(inside)
                inside = None
            else:
                inside += sign
        elif sign == "(":
            inside = ""
        elif sign == ")":
            raise Wrong("a comment ends that never began")
        elif not sign.isspace():
            words += sign.upper()
    if inside is not None:
        raise Wrong("a comment is not ended")
    return comments, words


def words_of(text):
    words, at = [], 0
    while at < len(text):
        match = WORD.match(text, at)
        if not match:
            raise Wrong(f"not a word: {text[at:]!r}")
        words.append((match.group(1), float(match.group(2))))
        at = match.end()
    return words


class Table:
    def __init__(self):
        self.unit = None      # 20 or 21
        self.absolute = None
        self.plane = None
        self.per_minute = None
        self.motion = None
        self.feed = 0.0       # mm/min
        self.at = None        # mm; where the torch stands is not known before the first rapid
        self.lit = None       # not known before it is said
        self.dwelt = 0.0
        self.z = None
        self.ended = False
        self.burns, self.rapids, self.comments, self.stops = [], [], [], 0

    def run(self, text):
        for number, line in enumerate(text.split("\n"), 1):
            try:
                if len(line) > LONGEST_LINE:
                    raise Wrong("longer than 256 signs")
                if any(not 32 <= ord(c) < 127 for c in line):
                    raise Wrong("a sign that is not printable ASCII")
                comments, words = split_line(line)
                self.comments += comments
                if words and self.ended:
                    raise Wrong("words after the end of the program")
                if words:
                    self.block(words_of(words))
            except Wrong as wrong:
                raise Wrong(f"line {number}: {wrong}: {line[:80]}")
        if not self.ended:
            raise Wrong("no M2 or M30 at the end (3.1)")

    def block(self, words):
        g, m, values = [], [], {}
        for letter, value in words:
            if letter in "GM":
                if value != int(value) or int(value) not in (G_GROUPS if letter == "G" else M_GROUPS):
                    raise Wrong(f"{letter}{value:g} is not known here")
                (g if letter == "G" else m).append(int(value))
            elif letter not in "FIJPXYZ":
                raise Wrong(f"a word {letter} has no business here")
            elif letter in values:
                raise Wrong(f"{letter} twice on a line")
            else:
                values[letter] = value
        if len({G_GROUPS[c] for c in g}) != len(g) or len({M_GROUPS[c] for c in m}) != len(m):
            raise Wrong("two words of one modal group on a line (3.3.5)")
        if len(m) > 4:
            raise Wrong("more than four M words on a line (3.3.5)")
        for code in g:
            if code in MM:
                if self.unit is not None or self.at is not None:
                    raise Wrong("units are said once, before any motion (3.5.7)")
                self.unit = code
            elif code == 17:
                self.plane = code
            elif code == 90:
                self.absolute = True
            elif code == 94:
                self.per_minute = True
            elif code in (0, 1, 2, 3):
                self.motion = code
        if "F" in values:
            if self.unit is None or values["F"] < 0:
                raise Wrong("a feed without units, or a negative one")
            self.feed = values.pop("F") * MM[self.unit]
        for code in m:
            if code == 3:
                if self.lit is not False:
                    raise Wrong("torch on while it is on, or while nobody knows")
                if self.at is None:
                    raise Wrong("torch on before the torch was placed")
                self.lit, self.dwelt = True, 0.0
                self.burns.append({"pierce": list(self.at), "dwell": 0.0, "feed": None, "moves": []})
            elif code == 5:
                self.lit = False
        if 4 in g:
            if values.get("P", -1) < 0:
                raise Wrong("a dwell needs P, not negative (3.5.4)")
            self.dwelt += values.pop("P")
        axes = [letter for letter in "XYZ" if letter in values]
        if axes and 4 not in g:
            self.move(values)
        elif any(code in (0, 1, 2, 3) for code in g) or values:
            raise Wrong("a motion without an axis (3.5.1-3), or figures without a motion")
        for code in m:
            if code == 0:
                self.stops += 1
            if code in (2, 30):
                if self.lit is not False:
                    raise Wrong("the program ends with the torch on")
                self.ended = True

    def move(self, values):
        if None in (self.unit, self.plane, self.absolute, self.per_minute, self.motion):
            raise Wrong("a motion before units (G20, G21), plane (G17), G90, G94 or a motion word were said")
        if self.lit is None:
            raise Wrong("a motion before anyone said that the torch is off")
        mm = MM[self.unit]
        if "Z" in values:
            if len(values) > 1 or self.motion > 1:
                raise Wrong("height and place change together")
            if self.motion == 1 and not self.feed > 0:
                raise Wrong("feed is 0 (3.5.2)")
            self.z = values["Z"] * mm
            return
        start = self.at
        if start is None and not ("X" in values and "Y" in values and self.motion == 0):
            raise Wrong("the first motion must be a rapid to X and Y")
        to = (values["X"] * mm if "X" in values else start[0], values["Y"] * mm if "Y" in values else start[1])
        if self.motion == 0:
            if self.lit:
                raise Wrong("a rapid with the torch on")
            if "I" in values or "J" in values:
                raise Wrong("a centre on a straight line")
            if start is not None:
                self.rapids.append([list(start), list(to)])
            self.at = to
            return
        if not self.feed > 0:
            raise Wrong("feed is 0 (3.5.2)")
        if not self.lit:
            raise Wrong("a cut with the torch off")
        burn = self.burns[-1]
        if not burn["moves"]:
            burn["dwell"], burn["feed"] = self.dwelt, self.feed
        if self.motion == 1:
            if "I" in values or "J" in values:
                raise Wrong("a centre on a straight line")
            burn["moves"].append({"from": list(start), "to": list(to), "sweep": 0.0})
        else:
            burn["moves"].append(self.arc(start, to, values, mm))
        self.at = to

    def arc(self, start, to, values, mm):
        if "I" not in values and "J" not in values:
            raise Wrong("an arc needs I or J (3.5.3.2)")
        centre = (start[0] + values.get("I", 0.0) * mm, start[1] + values.get("J", 0.0) * mm)
        first = math.dist(start, centre)
        if first == 0 or abs(first - math.dist(to, centre)) > RADIUS_TOLERANCE[self.unit] * mm:
            raise Wrong("the radii at the start and the end of an arc differ (3.5.3.2)")
        a = math.atan2(start[1] - centre[1], start[0] - centre[0])
        b = math.atan2(to[1] - centre[1], to[0] - centre[0])
        sweep = (b - a) % (2 * math.pi) or 2 * math.pi
        if self.motion == 2:
            sweep = (sweep - 2 * math.pi) or -2 * math.pi
        return {"from": list(start), "to": list(to), "centre": list(centre), "sweep": sweep}


def run(raw):
    """(problems, table)"""
    table = Table()
    try:
        table.run(raw.decode("latin-1"))
        return [], table
    except Wrong as wrong:
        return [str(wrong)], table


def spoiled(raw):
    """(what was done, bytes): one way to be wrong each."""
    lines = raw.decode("latin-1").split("\n")

    def first(start):
        return next(i for i, line in enumerate(lines) if line.startswith(start))

    def put(at, line):
        return "\n".join(lines[:at] + [line] + lines[at + 1:]).encode("latin-1")

    def without(at):
        return "\n".join(lines[:at] + lines[at + 1:]).encode("latin-1")

    arc, rapid, setup = first("G3"), first("G0 X"), first("G2")
    assert lines[rapid:arc].count("M3") == 1  # the first arc starts where the first rapid ends
    start, end = ([float(v) for v in re.findall(r"[XY](-?[\d.]+)", lines[k])] for k in (rapid, arc))
    # Moved along the chord, the centre gains on one radius what it loses on the other.
    axis = "IJ"[abs(end[1] - start[1]) > abs(end[0] - start[0])]
    i = re.search(axis + r"(-?[\d.]+)", lines[arc])
    unit = re.search(r"G2[01]", lines[setup]).group(0)
    off = 0.003 if unit == "G21" else 0.0003  # beyond the report's tolerance
    x = re.search(r"X(-?[\d.]+)", lines[arc])
    yield "an arc whose radii differ", put(arc, lines[arc].replace(i.group(0), f"{axis}{float(i.group(1)) + off * 3:.6f}"))
    yield "an arc whose end is off its circle", put(arc, lines[arc].replace(x.group(0), f"X{float(x.group(1)) + off * 3:.6f}"))
    yield "no unit", put(setup, lines[setup].replace(unit + " ", ""))
    yield "both units", put(setup, lines[setup] + (" G20" if unit == "G21" else " G21"))
    yield "the unit changed later", put(rapid, ("G20 " if unit == "G21" else "G21 ") + lines[rapid])
    yield "no plane", put(setup, lines[setup].replace("G17 ", ""))
    yield "neither absolute nor incremental", put(setup, lines[setup].replace("G90 ", ""))
    yield "feed 0", re.sub(rb"F[\d.]+", b"F0", raw)
    yield "no feed", re.sub(rb" F[\d.]+", b"", raw)
    if lines.count("M3") > 1:
        yield "a rapid with the torch on", without(first("M3") + lines[first("M3"):].index("M5"))
    yield "a cut with the torch off", without(first("M3"))
    yield "no torch off at the start", without(first("M5"))
    yield "a word that is not known", put(arc, lines[arc] + " Q1")
    yield "a code that is not known", put(arc, "G7 " + lines[arc])
    yield "a comma for the point", put(arc, lines[arc].replace(".", ",", 1))
    yield "an exponent", put(rapid, "G0 X1e3 Y5.0")
    yield "no number", put(rapid, "G0 Xnan Y5.0")
    yield "X twice", put(rapid, lines[rapid] + " X1.0")
    yield "two motions on a line", put(arc, "G1 " + lines[arc])
    yield "an arc without a centre", put(arc, re.sub(r" [IJ]-?[\d.]+", "", lines[arc]))
    yield "a comment inside a comment", put(0, "(a (b) c)")
    yield "a comment not ended", put(0, "(a")
    yield "a line too long", put(0, "(" + "x" * 300 + ")")
    yield "a sign outside ASCII", put(0, "(\xbd)")
    yield "a negative dwell", re.sub(rb"G4 P", b"G4 P-", raw)
    yield "no end", raw.replace(b"M2\n", b"")
    yield "something after the end", raw + b"G0 X1.0 Y1.0\n"
    yield "cut short", raw[:len(raw) // 2]


def main(arguments):
    controls = arguments[:1] == ["--controls"]
    status = 0
    for name in arguments[1:] if controls else arguments:
        with open(name, "rb") as file:
            raw = file.read()
        problems, table = run(raw)
        report = {"problems": problems, "unit": table.unit, "burns": table.burns, "rapids": table.rapids,
                  "comments": table.comments, "stops": table.stops}
        if controls:
            ways = list(spoiled(raw))
            report = {"problems": problems + [f"not noticed: {what}" for what, bytes_ in ways if not run(bytes_)[0]],
                      "controls": len(ways)}
        print(json.dumps(report))
        status |= bool(report["problems"])
    return int(status)


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
