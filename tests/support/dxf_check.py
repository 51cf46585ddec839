"""Reads DXF files strictly and prints what is in each as one line of JSON.

    dxf_check.py FILE...              checks; status 0 when nothing is wrong, 1 when something is
    dxf_check.py --controls FILE...   spoils a sound file in many ways and demands that each is noticed

The audit of ezdxf passes figures that are no numbers, negative radii, layers that do not exist and owners that do
not exist, so the structure is checked here as well, after the public DXF reference for releases 12 and 2000.
"""
import io
import json
import math
import sys

import ezdxf

R2000_SECTIONS = ["HEADER", "CLASSES", "TABLES", "BLOCKS", "ENTITIES", "OBJECTS"]
R12_SECTIONS = ["HEADER", "TABLES", "BLOCKS", "ENTITIES"]
R2000_TABLES = ["VPORT", "LTYPE", "LAYER", "STYLE", "VIEW", "UCS", "APPID", "DIMSTYLE", "BLOCK_RECORD"]
MARKERS = {
    "CIRCLE": ["AcDbEntity", "AcDbCircle"],
    "LWPOLYLINE": ["AcDbEntity", "AcDbPolyline"],
    "POINT": ["AcDbEntity", "AcDbPoint"],
    "LINE": ["AcDbEntity", "AcDbLine"],
    "TEXT": ["AcDbEntity", "AcDbText", "AcDbText"],
    "BLOCK": ["AcDbEntity", "AcDbBlockBegin"],
    "ENDBLK": ["AcDbEntity", "AcDbBlockEnd"],
    "VPORT": ["AcDbSymbolTableRecord", "AcDbViewportTableRecord"],
    "LTYPE": ["AcDbSymbolTableRecord", "AcDbLinetypeTableRecord"],
    "LAYER": ["AcDbSymbolTableRecord", "AcDbLayerTableRecord"],
    "STYLE": ["AcDbSymbolTableRecord", "AcDbTextStyleTableRecord"],
    "APPID": ["AcDbSymbolTableRecord", "AcDbRegAppTableRecord"],
    "DIMSTYLE": ["AcDbSymbolTableRecord", "AcDbDimStyleTableRecord"],
    "BLOCK_RECORD": ["AcDbSymbolTableRecord", "AcDbBlockTableRecord"],
    "DICTIONARY": ["AcDbDictionary"],
    "ACDBDICTIONARYWDFLT": ["AcDbDictionary", "AcDbDictionaryWithDefault"],
    "ACDBPLACEHOLDER": [],
    "MLINESTYLE": ["AcDbMlineStyle"],
    "LAYOUT": ["AcDbPlotSettings", "AcDbLayout"],
}
R12_ENTITIES = {"CIRCLE", "POINT", "LINE", "TEXT", "POLYLINE", "VERTEX", "SEQEND"}
POINTER_CODES = {330, 340, 350, 390}
HIGHEST_GROUP_BYTES = 255


class Malformed(Exception):
    pass


def kind_of(code):
    """float, int, handle or text, by the ranges of the reference."""
    if 10 <= code <= 59 or 110 <= code <= 149 or 210 <= code <= 239 or 1010 <= code <= 1059:
        return "float"
    if 60 <= code <= 79 or 90 <= code <= 99 or 170 <= code <= 179 or 270 <= code <= 299 or 370 <= code <= 389:
        return "int"
    if code in (5, 105) or 320 <= code <= 369 or 390 <= code <= 399:
        return "handle"
    if code <= 9 or code == 100:
        return "text"
    raise Malformed(f"group code {code} has no business here")


def read_tags(raw):
    try:
        text = raw.decode("ascii")
    except UnicodeDecodeError as error:
        raise Malformed(f"not ASCII at byte {error.start}")
    if not text.endswith("\n"):
        raise Malformed("last line is not ended")
    if any(ord(c) < 32 and c != "\n" for c in text):
        raise Malformed("control character in the file")
    lines = text[:-1].split("\n")
    if len(lines) % 2:
        raise Malformed("odd number of lines")
    tags = []
    for i in range(0, len(lines), 2):
        try:
            code = int(lines[i])
        except ValueError:
            raise Malformed(f"line {i + 1}: {lines[i]!r} is no group code")
        if len(lines[i + 1]) > HIGHEST_GROUP_BYTES:
            raise Malformed(f"line {i + 2}: longer than {HIGHEST_GROUP_BYTES} bytes")
        tags.append((code, lines[i + 1]))
    return tags


def check_values(tags, problems):
    for code, value in tags:
        try:
            kind = kind_of(code)
            if kind == "float":
                number = float(value)
                if not math.isfinite(number) or "," in value or abs(number) > 1e9:
                    problems.append(f"group {code}: {value} is no usable number")
            elif kind == "int":
                int(value)
            elif kind == "handle":
                if int(value, 16) < 0 or value != value.upper():
                    problems.append(f"group {code}: bad handle {value}")
        except (ValueError, Malformed) as error:
            problems.append(f"group {code}: {value!r}: {error}")


def split_at_zero(tags):
    things = []
    for tag in tags:
        if tag[0] == 0:
            things.append([tag])
        elif things:
            things[-1].append(tag)
        else:
            raise Malformed("starts with no group 0")
    return things


def sections_of(tags):
    things = split_at_zero(tags)
    if things[-1] != [(0, "EOF")]:
        raise Malformed("does not end in EOF")
    sections, name = {}, None
    for thing in things[:-1]:
        word = thing[0][1]
        if word == "SECTION":
            if name is not None or len(thing) < 2 or thing[1][0] != 2:
                raise Malformed("SECTION inside a section, or without a name")
            name = thing[1][1]
            if name in sections:
                raise Malformed(f"section {name} twice")
            sections[name] = [thing[2:]] if len(thing) > 2 else []
        elif word == "ENDSEC":
            if name is None or len(thing) != 1:
                raise Malformed("ENDSEC out of place")
            name = None
        elif name is None:
            raise Malformed(f"{word} outside a section")
        else:
            sections[name].append(thing)
    if name is not None:
        raise Malformed(f"section {name} not closed")
    return sections


def header_of(section):
    variables, name = {}, None
    for code, value in (section[0] if section else []):
        if code == 9:
            if value in variables:
                raise Malformed(f"{value} twice")
            name = value
            variables[name] = {}
        elif name is None:
            raise Malformed("header value without a name")
        else:
            variables[name][code] = value
    return variables


def values(thing, code):
    return [v for c, v in thing if c == code]


def one(thing, code, problems, default="0"):
    found = values(thing, code)
    if len(found) != 1:
        problems.append(f"{thing[0][1]}: group {code} stands {len(found)} times")
        return default
    return found[0]


def check_tables(section, r2000, problems):
    """Names per table, and every table head and record."""
    names, records, current = {}, [], None
    for thing in section:
        word = thing[0][1]
        if word == "TABLE":
            if current is not None:
                problems.append("TABLE inside a table")
            current = values(thing, 2)[0]
            if current in names:
                problems.append(f"table {current} twice")
            names[current] = []
            stated = int(values(thing, 70)[0])
            records.append(thing)
        elif word == "ENDTAB":
            if current is None:
                problems.append("ENDTAB out of place")
            elif len(names[current]) != stated:
                problems.append(f"table {current} states {stated} entries, has {len(names[current])}")
            current = None
        else:
            if word != current:
                problems.append(f"{word} in table {current}")
            name = values(thing, 2)[0]
            if name.upper() in (n.upper() for n in names.get(current, [])):
                problems.append(f"{word} {name} twice")
            names.setdefault(current, []).append(name)
            records.append(thing)
    if current is not None:
        problems.append("table not closed")
    if r2000 and list(names) != R2000_TABLES:
        problems.append(f"tables are {list(names)}")
    return names, records


def check_handles(sections, records, seed, problems):
    """Handles unique and under the seed, owners and pointers to something that is there."""
    owned = records + sections["BLOCKS"] + sections["ENTITIES"] + sections["OBJECTS"]
    handles = {}
    for thing in owned:
        word = thing[0][1]
        handle = values(thing, 105 if word == "DIMSTYLE" else 5)
        if len(handle) != 1:
            problems.append(f"{word}: {len(handle)} handles")
            continue
        number = int(handle[0], 16)
        if number in handles or number == 0:
            problems.append(f"{word}: handle {handle[0]} again or zero")
        if number >= seed:
            problems.append(f"{word}: handle {handle[0]} is not below the seed")
        handles[number] = thing
    table_of = {}
    current = None
    for thing in records:
        if thing[0][1] == "TABLE":
            current = int(values(thing, 5)[0], 16)
        else:
            table_of[id(thing)] = current
    spaces = {int(values(t, 5)[0], 16) for t in records if t[0][1] == "BLOCK_RECORD" and values(t, 5)}
    root = sections["OBJECTS"][0] if sections["OBJECTS"] else None
    for thing in owned:
        word = thing[0][1]
        for code, value in thing:
            if code in POINTER_CODES and int(value, 16) not in handles and not (
                    code == 330 and int(value, 16) == 0 and (word == "TABLE" or thing is root)):
                problems.append(f"{word}: group {code} points at {value}, which is not there")
        owner = int((values(thing, 330) or ["0"])[0], 16)
        if not values(thing, 330):
            problems.append(f"{word}: no owner")
        elif id(thing) in table_of and owner != table_of[id(thing)]:
            problems.append(f"{word}: its owner is not its table")
        elif (thing in sections["ENTITIES"] or thing in sections["BLOCKS"]) and owner not in spaces:
            problems.append(f"{word}: its owner is no block record")
    for thing in sections["OBJECTS"]:
        if "DICTIONARY" in thing[0][1]:
            for value in values(thing, 350):
                target = handles.get(int(value, 16))
                if target is not None and int(values(target, 330)[0], 16) != int(values(thing, 5)[0], 16):
                    problems.append(f"dictionary entry {value} has another owner")
    for record in (t for t in records if t[0][1] == "BLOCK_RECORD"):
        layout = handles.get(int(one(record, 340, problems), 16))
        if layout is None or layout[0][1] != "LAYOUT" or values(layout, 330)[-1] != values(record, 5)[0]:
            problems.append("block record and layout do not name each other")


def check_markers(things, problems):
    for thing in things:
        word = thing[0][1]
        if word == "TABLE":
            if values(thing, 100)[:1] != ["AcDbSymbolTable"]:
                problems.append("TABLE without its marker")
        elif word not in MARKERS:
            problems.append(f"{word} is not expected here")
        elif values(thing, 100) != MARKERS[word]:
            problems.append(f"{word}: markers {values(thing, 100)}")


def check_entity(thing, names, problems):
    word = thing[0][1]
    if one(thing, 8, problems) not in names.get("LAYER", []):
        problems.append(f"{word}: layer {values(thing, 8)} is not defined")
    for style in values(thing, 7):
        if style not in names.get("STYLE", []):
            problems.append(f"{word}: text style {style} is not defined")
    if word == "CIRCLE" and not float(one(thing, 40, problems)) > 0:
        problems.append("CIRCLE: radius is not above zero")
    if word == "TEXT":
        if not float(one(thing, 40, problems)) > 0:
            problems.append("TEXT: height is not above zero")
        one(thing, 1, problems)
    if word in ("CIRCLE", "POINT", "TEXT", "LINE", "VERTEX"):
        for code in (10, 20, 30) + ((11, 21, 31) if word == "LINE" else ()):
            one(thing, code, problems)
    if word == "LWPOLYLINE":
        if int(one(thing, 90, problems)) != len(values(thing, 10)) or len(values(thing, 10)) < 2:
            problems.append("LWPOLYLINE: stated and true number of corners differ")
        if len(values(thing, 10)) != len(values(thing, 20)):
            problems.append("LWPOLYLINE: a corner without x or y")
    # A lead runs from here to there; everything else goes round.
    if word in ("LWPOLYLINE", "POLYLINE") and one(thing, 70, problems) != ("0" if values(thing, 8) == ["LEAD"] else "1"):
        problems.append(f"{word}: an open outline or a closed lead")


def check_polylines(entities, problems):
    inside = 0
    for thing in entities:
        word = thing[0][1]
        if word == "POLYLINE":
            if inside:
                problems.append("POLYLINE without SEQEND")
            if one(thing, 66, problems) != "1":
                problems.append("POLYLINE does not announce its corners")
            inside = 1
        elif word == "VERTEX":
            if not inside:
                problems.append("VERTEX alone")
            inside += 1
        elif word == "SEQEND":
            if inside < 3:
                problems.append("SEQEND alone, or a polyline of less than two corners")
            inside = 0
        elif inside:
            problems.append(f"{word} inside a POLYLINE")
    if inside:
        problems.append("POLYLINE without SEQEND")


def structure_problems(raw):
    problems = []
    try:
        tags = read_tags(raw)
        check_values(tags, problems)
        sections = sections_of(tags)
        header = header_of(sections.get("HEADER", []))
        version = header.get("$ACADVER", {}).get(1)
        r2000 = version == "AC1015"
        if not r2000 and version != "AC1009":
            raise Malformed(f"version {version}")
        if list(sections) != (R2000_SECTIONS if r2000 else R12_SECTIONS):
            raise Malformed(f"sections are {list(sections)}")
        names, records = check_tables(sections["TABLES"], r2000, problems)
        for thing in records:
            for line_type in values(thing, 6) if thing[0][1] == "LAYER" else []:
                if line_type.upper() not in (n.upper() for n in names["LTYPE"]):
                    problems.append(f"line type {line_type} is not defined")
        for low, high in (("$EXTMIN", "$EXTMAX"), ("$LIMMIN", "$LIMMAX")):
            for code in (10, 20):
                if not float(header[low][code]) < float(header[high][code]):
                    problems.append(f"{low} is not below {high}")
        for thing in sections["ENTITIES"]:
            check_entity(thing, names, problems)
        if r2000:
            units = header.get("$INSUNITS", {}).get(70)
            if units not in ("1", "4") or header.get("$MEASUREMENT", {}).get(70) != {"1": "0", "4": "1"}[units]:
                problems.append("units are neither inch nor mm, or contradict themselves")
            seed = int(header["$HANDSEED"][5], 16)
            check_handles(sections, records, seed, problems)
            check_markers(records + sections["BLOCKS"] + sections["ENTITIES"] + sections["OBJECTS"], problems)
            classes = {values(t, 1)[0] for t in sections["CLASSES"]}
            for thing in sections["OBJECTS"]:
                if thing[0][1] in ("ACDBDICTIONARYWDFLT", "ACDBPLACEHOLDER", "LAYOUT") and thing[0][1] not in classes:
                    problems.append(f"class {thing[0][1]} is not declared")
        else:
            check_polylines(sections["ENTITIES"], problems)
            for thing in sections["ENTITIES"]:
                if thing[0][1] not in R12_ENTITIES:
                    problems.append(f"{thing[0][1]} is no R12 entity")
                if any(c in (5, 100, 330) for c, _ in thing):
                    problems.append(f"{thing[0][1]}: groups of a later release in R12")
            if "$INSUNITS" in header:
                problems.append("R12 has no units")
    except (Malformed, KeyError, IndexError, ValueError) as error:
        problems.append(f"{type(error).__name__}: {error}")
    return problems


def audit_problems(document):
    auditor = document.audit()
    return [f"ezdxf: {e.code} {e.message}" for e in list(auditor.errors) + list(auditor.fixes)]


def entity_json(entity):
    kind, out = entity.dxftype(), {"type": entity.dxftype(), "layer": entity.dxf.layer}
    if kind == "CIRCLE":
        out.update(x=entity.dxf.center.x, y=entity.dxf.center.y, radius=entity.dxf.radius)
    elif kind == "POINT":
        out.update(x=entity.dxf.location.x, y=entity.dxf.location.y)
    elif kind == "LINE":
        out.update(x=entity.dxf.start.x, y=entity.dxf.start.y, x2=entity.dxf.end.x, y2=entity.dxf.end.y)
    elif kind == "TEXT":
        out.update(x=entity.dxf.insert.x, y=entity.dxf.insert.y, height=entity.dxf.height, text=entity.dxf.text)
    elif kind == "LWPOLYLINE":
        out.update(closed=bool(entity.closed), vertices=[list(v) for v in entity.get_points("xyb")])
    elif kind == "POLYLINE":
        out.update(closed=bool(entity.is_closed), type="LWPOLYLINE",
                   vertices=[[v.dxf.location.x, v.dxf.location.y, v.dxf.get("bulge", 0.0)] for v in entity.vertices])
    return out


def spoiled(raw):
    """(what was done, bytes): one way to be wrong each."""
    lines = raw.decode("ascii").split("\n")
    r2000 = "AC1015" in lines
    entities = lines.index("ENTITIES")

    def entity(word):
        return next(i for i in range(entities, len(lines)) if lines[i] == word and lines[i - 1].strip() == "0")

    def group(start, code):
        return next(i + 1 for i in range(start + 1, len(lines), 2) if int(lines[i]) == code)

    def with_value(at, value):
        return "\n".join(lines[:at] + [value] + lines[at + 1:]).encode("latin-1")

    circle = entity("CIRCLE")
    yield "no number for a centre", with_value(group(circle, 10), "nan")
    yield "an endless number", with_value(group(circle, 20), "inf")
    yield "a comma for the point", with_value(group(circle, 10), "1,5")
    yield "a negative radius", with_value(group(circle, 40), "-5.0")
    yield "a layer that is not defined", with_value(group(circle, 8), "NOSUCH")
    yield "a sign outside ASCII", with_value(group(entity("TEXT"), 1), "\xbd")
    yield "a text too long", with_value(group(entity("TEXT"), 1), "x" * 300)
    yield "no EOF", raw[:raw.rindex(b"  0\nEOF")]
    yield "cut short", raw[:len(raw) // 2]
    at = next(i for i in range(entities, len(lines)) if lines[i] == "ENDSEC")
    yield "a section left open", "\n".join(lines[:at - 1] + lines[at + 1:]).encode()
    outline = entity("LWPOLYLINE" if r2000 else "POLYLINE")
    yield "an open outline or a closed lead", with_value(group(outline, 70), "10"[int(lines[group(outline, 70)])])
    if r2000:
        yield "an owner that is not there", with_value(group(circle, 330), "FFF0")
        yield "an owner of the wrong kind", with_value(group(circle, 330), "30")
        yield "a handle twice", with_value(group(circle, 5), lines[group(entity("TEXT"), 5)])
        yield "a handle at the seed", with_value(group(circle, 5), lines[group(lines.index("$HANDSEED"), 5)])
        yield "a marker lost", with_value(group(circle, 100), "AcDbThing")
        yield "units of feet", with_value(group(lines.index("$INSUNITS"), 70), "2")
        yield "a corner too few", with_value(group(outline, 90), "99")
        yield "a layout that is not there", with_value(group(lines.index("*Model_Space"), 340), "FFF0")
    else:
        at = entity("SEQEND")
        yield "no end of the outline", "\n".join(lines[:at - 1] + lines[at + 3:]).encode()


def controls_report(raw):
    missed = [f"not noticed: {what}" for what, bytes_ in spoiled(raw) if not structure_problems(bytes_)]
    return {"problems": structure_problems(raw) + missed, "controls": sum(1 for _ in spoiled(raw))}


def report_of(raw):
    problems = structure_problems(raw)
    report = {"problems": problems}
    try:
        document = ezdxf.read(io.StringIO(raw.decode("ascii", "replace")))
        problems += audit_problems(document)
        report.update(version=document.dxfversion, units=document.header.get("$INSUNITS", 0),
                      layers=[layer.dxf.name for layer in document.layers],
                      entities=[entity_json(e) for e in document.modelspace()])
    except Exception as error:  # whatever it is, the file is not one to hand out
        problems.append(f"ezdxf: {type(error).__name__}: {error}")
    return report


def main(arguments):
    controls = arguments[:1] == ["--controls"]
    status = 0
    for name in arguments[1:] if controls else arguments:
        with open(name, "rb") as file:
            raw = file.read()
        report = controls_report(raw) if controls else report_of(raw)
        print(json.dumps(report))
        status |= bool(report["problems"])
    return int(status)


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
