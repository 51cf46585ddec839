#!/usr/bin/env python3
"""Holds resources/schema against the files, the reports and the reader, with a validator that is not ours.

    tests/schema.py PROGRAM          run in the root folder

The schemas are valid themselves and describe every property; every sample and every report of it is valid; what is
plainly wrong is refused; texts that the schema takes the reader takes too; and every key that the reader knows stands in
the schema, and the other way round.
"""
import copy
import glob
import json
import re
import subprocess
import sys
import tempfile
from pathlib import Path

from jsonschema import Draft202012Validator

PROGRAM = sys.argv[1]
failures = []


def fail(text):
    failures.append(text)
    print("FAILED:", text)


def load(file):
    return json.loads(Path(file).read_text(encoding="utf-8"))


def run(*words):
    done = subprocess.run([PROGRAM, *map(str, words)], capture_output=True, text=True)
    if done.returncode not in (0, 1, 2):
        fail(f"{' '.join(map(str, words))}: status {done.returncode}: {done.stderr}")
    return done


schemas = {name: load(f"resources/schema/{name}.schema.json") for name in ("job", "rack", "report")}
valid = {name: Draft202012Validator(schema) for name, schema in schemas.items()}


def first_error(name, value):
    for error in valid[name].iter_errors(value):
        while error.context:  # the deepest says most
            error = max(error.context, key=lambda e: len(e.absolute_path))
        return f"{error.json_path}: {error.message[:200]}"
    return None


# --- The schemas themselves
def resolve(schema, node):
    """What `$ref` stands for, put together with what stands beside it."""
    if "$ref" in node:
        return {**schema["$defs"][node["$ref"].rsplit("/", 1)[1]], **{k: v for k, v in node.items() if k != "$ref"}}
    return node


def described(name, node, path):
    for key, child in node.get("properties", {}).items():
        if not child.get("description"):
            fail(f"{name} schema: {path}{key} is not described")
    for key, child in node.items():
        for one in child if isinstance(child, list) else child.values() if key in ("properties", "$defs") else [child]:
            if isinstance(one, dict) and key not in ("if", "then", "not"):
                described(name, one, path)


for name, schema in schemas.items():
    Draft202012Validator.check_schema(schema)
    described(name, schema, "")

# --- What is right
jobs = sorted(glob.glob("samples/*.plate.json"))
if len(jobs) < 10:
    fail("no samples here; run in the root folder")
for file in jobs:
    if error := first_error("job", load(file)):
        fail(f"{file}: {error}")
if error := first_error("rack", load("samples/rack.json")):
    fail(f"samples/rack.json: {error}")

seen = set()  # keys that some report had


def walk_report(schema, node, value, path, where):
    """Every key of a report stands in the schema; an outside reader must let others pass, ours must not write them."""
    node = resolve(schema, node)
    for branch in node.get("anyOf", []) + node.get("oneOf", []):
        merged = resolve(schema, branch)
        if Draft202012Validator({**merged, "$defs": schema["$defs"]}).is_valid(value) and merged.get("type") != "null":
            node = merged
            break
    if isinstance(value, dict) and "properties" in node:
        for key, child in value.items():
            if key not in node["properties"]:
                fail(f"{where}: {path}{key} is not in the report schema")
            else:
                walk_report(schema, node["properties"][key], child, f"{path}{key}.", where)
    elif isinstance(value, list) and "items" in node:
        for child in value:
            walk_report(schema, node["items"], child, path, where)


def hold_report(words):
    done = run(*words)
    if done.returncode == 2:
        return fail(f"{' '.join(words)}: {done.stderr}")
    report = json.loads(done.stdout)
    if error := first_error("report", report):
        fail(f"{' '.join(words)}: {error}")
    walk_report(schemas["report"], {"oneOf": schemas["report"]["oneOf"]}, report, "", " ".join(words))


for file in jobs:
    hold_report(["check", file, "--json", "--at=40,10", "--at=2000,0"])
few = [f for f in jobs if re.search("six_pin.plate|nobody_knows", f)]  # these take their time
for file in few:
    hold_report(["ladder", file, "--json"])
    hold_report(["rack", file, "--json"])
    hold_report(["propose", file, "--json"])
    hold_report(["tool", file, *few, "--json"])

# --- What is wrong. The place, what is put there, and whether the reader must refuse it too (it is less strict with
# nothing, and stricter with what must agree).
six = load("samples/mill_lane_six_pin.plate.json")
rack = load("samples/rack.json")


def put(tree, path, value):
    tree = copy.deepcopy(tree)
    at = tree
    keys = [int(k) if k.isdigit() else k for k in path.split("/")]
    for key in keys[:-1]:
        at = at[key] if isinstance(key, int) else at.setdefault(key, {})
    at[keys[-1]] = value
    return tree


def reader_refuses(tree, suffix=".plate.json"):
    with tempfile.TemporaryDirectory() as folder:
        file = Path(folder) / ("file" + suffix)
        file.write_text(json.dumps(tree), encoding="utf-8")
        if suffix == ".plate.json":
            return run("check", file).returncode == 2
        done = run("rack", few[0], "--rack", file, "--json")
        return done.returncode == 2 or bool(json.loads(done.stdout)["refused"])


wrong_jobs = [
    ("platewright", 2), ("platewright", "1"), ("platewright", None), ("title", 7), ("work", "squeeze"), ("work", True),
    ("stations", []), ("stations/count", -6), ("stations/count", 2.5), ("stations/count", "6"), ("stations/count", 0),
    ("stations/circle", True), ("stations/circle", "110"), ("stations/circle", "110 kg"), ("stations/circle", -5),
    ("stations/circle", "12,5 mm"), ("stations/circle", ["100 mm", "110 mm"]), ("stations/circle", "a hand"),
    ("stations/at", [["50 mm"]]), ("stations/at", ["50 mm", "0 mm"]), ("stations/loaded", [1, 0]),
    ("stations/readings", [{"pins": [1]}]), ("stations/readings", [{"pins": [1, 1.5]}]), ("load", {"total": "7500"}),
    ("load", {"total": "7500 mm"}), ("load", {"share": [-1]}), ("load", {"total": [1, 2, 3]}),
    ("springs", {"rate": "12 N/mm"}), ("springs", [{"rate": "12 N"}]), ("springs", [{"loads": [{"length": "60 mm"}]}]),
    ("springs", [{"per_station": 0}]), ("springs", [{"ends": "bent"}]), ("plate/thickness", True),
    ("plate/thickness", 0), ("plate/thickness", -12), ("plate/thickness", {}), ("plate/stacked", -1),
    ("plate/outline", {"diameter": "140 mm"}), ("plate/outline", {"shape": "star"}), ("plate/outline", "disc"),
    ("plate/outline", {"shape": "polygon", "points": [["0 mm", "0 mm", "x"]]}), ("plate/steel", 235),
    ("plate/steel", {"name": "mine", "yield": "250 mm"}), ("plate/tests", {"file": "sings"}),
    ("plate/holes", [{"diameter": "8 mm"}]), ("plate/holes", [{"at": ["1 mm", "2 mm"], "made": "by hand"}]),
    ("screw/thread", 20), ("screw/hammering", "no"), ("screw/thread_friction", 3), ("screw/thread_friction", "0.15"),
    ("screw/wrench", "300 N"), ("ram", {"area": "1600 mm"}), ("ram", {"max_pressure": "700 mm"}),
    ("back", {"kind": "wall"}), ("hub", {"fit": "tight"}), ("hub", {"rust": 0}), ("hub", {"half_angle": "3 mm"}),
    ("hub", {"jaws": {"count": 0}}), ("heat", {"part": "20"}), ("heat", {"part": 5000}),
    ("keep_clear", [{"at": ["0 mm", "0 mm"]}]), ("rack", ["rack.json"]), ("piece", "slab"), ("piece", {"turn": "x"}),
    ("cutting", {"process": "laser cutter"}), ("cutting", {"kerf": "200 N"}), ("wanted", {"margin": 0.5}),
]
for path, value in wrong_jobs:
    tree = put(six, path, value)
    if not first_error("job", tree):
        fail(f"job schema takes {path} = {json.dumps(value)}")
    if not reader_refuses(tree):
        fail(f"the reader takes {path} = {json.dumps(value)}, the schema does not")
wrong_racks = [
    ("platewright_rack", 2), ("offcuts", {}), ("offcuts/0", "slab"), ("offcuts/0/thickness", True),
    ("offcuts/0/thickness", None), ("offcuts/0/thickness", "12"), ("offcuts/0/outline", None),
    ("offcuts/0/count", -1), ("offcuts/0/owned", "yes"), ("offcuts/0/steel_is", "sure"),
    ("offcuts/0/holes", [{"diameter": "14 mm"}]), ("offcuts/0/bad_areas", [{"note": "weld"}]),
    ("offcuts/0/pitting", "60 N"),
]
for path, value in wrong_racks:
    tree = put(rack, path, value)
    if not first_error("rack", tree):
        fail(f"rack schema takes {path} = {json.dumps(value)}")
    if not reader_refuses(tree, ".json"):
        fail(f"the reader takes the rack's {path} = {json.dumps(value)}, the schema does not")

# --- Texts as people type them: both take them. (What the reader takes the schema must; the other way round it cannot.)
texts = {
    "plate/thickness": ["7/8 in", '2 11/32"', "2-11/32 in", "1.25in", ".530 in", "530 thou", "1 ft 2 in", "12.7 mm",
                        "1/2″", "½ in", "2½″", "1'-2\"", "12 MM", "1.2 cm", "0.012 m", "10 ga", "7 gauge", "11 ga.",
                        "12\u00a0mm", " 12 mm ", "1,250.5 mm", "12000 µm", "500 microns", "+12 mm", "1⁄2 in", "500 mils"],
    "load/total": ["180 lbf", "180 lb", "2100 lbs", "0.8 kN", "95 kgf", "95 kp", "12 daN", "12 t", "12 ton", "2 short tons",
                   "180-205 lbf", "180 to 205 lbf", "180–205 lbf", "190 ±8 lbf", "190 lbf ±5%", "190 lbf +/- 8 lbf",
                   "190 ± 5 % lbf", "1.5 to 2 kip", "1,690 lbf", "190 lbf ±8", ["180 lbf", 900], 7500, [6900, 7500]],
    "springs/0/rate": ["80 lb/in", "1.4 kg/mm", "12 N/mm", "12 N / mm", "12 N per mm", "700 lbf/inch", 12],
    "ram/area": ["1600 mm2", "2.5 in2", "16 cm²", "2.5 sq in", "2.5 square inches", 1600],
    "ram/max_pressure": ["700 bar", "10000 psi", "10 ksi", "70 MPa", "70 N/mm2", "700 kgf/cm2", "0.07 GPa"],
    "stations/start": ["30 deg", "30°", "-30 degrees", "0.5 rad", "−45 deg", 30],
    "heat/part": ["20 C", "68 F", "20 °C", "20 degC", "300 deg F", "20℃", "-5 C", "20 celsius", 20],
    "hub/interference": ["2-3 thou", "0.03 to 0.08 mm", ["0.03 mm", "0.08 mm"], 0.05, "0.05 mm ±0.02 mm"],
}
base = {"platewright": 1, "springs": [{}], "hub": {}, "ram": {}, "load": {}, "heat": {}, "stations": {}, "plate": {}}
for path, values in texts.items():
    for value in values:
        tree = put(base, path, value)
        if error := first_error("job", tree):
            fail(f"job schema refuses {path} = {json.dumps(value, ensure_ascii=False)}: {error}")
        if reader_refuses(tree):
            fail(f"the schema takes {path} = {json.dumps(value, ensure_ascii=False)}, the reader does not")

# --- Keys: the schema's, as paths ("plate.holes[].at"), and what a file needs to carry each of them
LEAF = {"length": "20 mm", "area": "1600 mm2", "force": "500 N", "rate": "12 N/mm", "stress": "2000 MPa", "angle": "5 deg",
        "temperature": "20 C"}


def keys_of(schema, node, path):
    node = resolve(schema, node)
    found = set()
    for key, child in node.get("properties", {}).items():
        here = f"{path}.{key}" if path else key
        found |= {here} | keys_of(schema, child, here)
    if "items" in node:
        found |= keys_of(schema, node["items"], path + "[]")
    for branch in node.get("anyOf", []):
        found |= keys_of(schema, branch, path)
    return found


def reader_keys(files, start, skip=()):
    """The keys that the reader's own source asks for: every figures.kind("key", ...) of a function, and of the functions
    that it calls for a part, a row or a group."""
    source = "\n".join(Path(f).read_text(encoding="utf-8") for f in files)
    heads = list(re.finditer(r"^(?:void|bool) (?:FieldReader::)?(\w+)\(FieldReader& figures[^;{]*\{", source, re.M))
    bodies = {h.group(1): source[h.end():source.index("\n}\n", h.end())] for h in heads}
    material = ["name", "yield", "ultimate", "E", "nu", "density", "expansion"]

    def keys(function, path):
        found = set()
        body = bodies[function]
        # In the order of the text: a group's own lines use `inner`.
        for kind, key, rest in re.findall(r'figures\.(\w+)\("(\w+)"([^;]*?)(?=\)?;|\) ?\{|\)\n)', body):
            if kind in ("problem", "has", "missing"):
                continue
            here = f"{path}.{key}" if path else key
            found.add(here)
            inner = re.search(r"(?:, |::)(read\w+)\)?$", rest.strip())
            if kind in ("part", "rows") and inner:
                found |= keys(inner.group(1), here + ("[]" if kind == "rows" else ""))
            elif kind == "material":
                found |= {f"{here}.{one}" for one in material}
            elif kind == "corners":
                found |= {f"{here}[].at", f"{here}[].bulge"}
        for key, function_in in re.findall(r'figures\.group\("(\w+)", \[&\]\(FieldReader& inner\) \{.*?(read\w+)\(inner',
                                           body, re.S):
            here = f"{path}.{key}" if path else key
            found |= {here} | keys(function_in, here)
        for called in re.findall(r"(?<![\w.])(?:jobfile::)?(read\w+)\(figures,", body):
            if called not in skip:
                found |= keys(called, path)
        return found

    return keys(start, "")


reader = reader_keys(sorted(glob.glob("core/jobfile/read*.cpp")), "readAll")
schema_keys = keys_of(schemas["job"], schemas["job"], "")
for key in sorted(reader - schema_keys):
    fail(f"the reader knows {key}, the job schema does not")
for key in sorted(schema_keys - reader):
    fail(f"the job schema has {key}, the reader does not ask for it")
if len(reader) < 150:
    fail(f"only {len(reader)} keys were found in the reader's source")
rack_reader = {f"offcuts[].{key}" for key in reader_keys(
    ["core/jobfile/read_plate.cpp", "core/rack/read_rack.cpp"], "readOffcut")}
rack_reader |= {"platewright_rack", "offcuts", "title", "notes"}
rack_keys = keys_of(schemas["rack"], schemas["rack"], "")
for key in sorted(rack_reader ^ rack_keys):
    fail(f"rack: {key} is in {'the reader' if key in rack_reader else 'the schema'} only")


# ... and by trial: a file that carries every key of the schema has none that the reader does not know.
def fill(schema, node):
    node = resolve(schema, node)
    if "const" in node:
        return node["const"]
    if "enum" in node:
        return node["enum"][0]
    if "anyOf" in node:
        whole = [b for b in node["anyOf"] if resolve(schema, b).get("type") == "object"]
        texts = [b["$ref"] for b in node["anyOf"] if "_text" in b.get("$ref", "")]
        if not whole and texts:
            return LEAF[re.search(r"/(\w+?)(_range)?_text", texts[0]).group(1)]
        return fill(schema, (whole or [b for b in node["anyOf"] if b.get("type") != "null"])[0])
    kind = node.get("type", "object")
    kind = kind[0] if isinstance(kind, list) else kind
    if kind == "object":
        return {key: fill(schema, child) for key, child in node.get("properties", {}).items()}
    if kind == "array":
        rows = [fill(schema, node["items"]) for _ in range(node.get("minItems", 1))]
        return list(range(1, len(rows) + 1)) if node.get("uniqueItems") else rows
    return {"string": "M20", "boolean": True, "integer": max(1, node.get("minimum", 1)),
            "number": node.get("minimum", 0) or 0.5}[kind]


with tempfile.TemporaryDirectory() as folder:
    full = fill(schemas["job"], schemas["job"])
    full["a key of tomorrow"] = 1
    file = Path(folder) / "full.plate.json"
    file.write_text(json.dumps(full), encoding="utf-8")
    told = run("check", file).stderr
    # Unknown keys are told of a job without problems only: blank what disagrees with another figure, and ask again. A
    # blank figure's key stays, so it is asked for all the same.
    for _ in range(20):
        fields = re.findall(r"^([a-zA-Z_.\[\]0-9]+): ", told, re.M)
        if not fields or "a key of tomorrow" in told:
            break
        for field in fields:
            at, keys = full, re.findall(r"[^.\[\]]+", field)
            for key in keys[:-1]:
                at = at[int(key)] if isinstance(at, list) else at[key]
            at[int(keys[-1]) if isinstance(at, list) else keys[-1]] = None
        file.write_text(json.dumps(full), encoding="utf-8")
        told = run("check", file).stderr
    unknown = re.findall(r"not known and left alone: (.*)", told)
    if unknown != ["a key of tomorrow"]:
        fail(f"of a file with every key of the schema the reader does not know {unknown}: {told[:400]}")

# --- Files of past versions, frozen: they still open without a problem, and stand in today's schema.
old = sorted(Path("tests/reference/old_files").glob("v*/*.json"))
if not old:
    fail("tests/reference/old_files is empty")
for file in old:
    is_rack = file.name == "rack.json"
    if error := first_error("rack" if is_rack else "job", load(file)):
        fail(f"{file}: {error}")

print(f"schema: {len(jobs)} jobs, {len(wrong_jobs) + len(wrong_racks)} wrong files, {len(schema_keys)} job keys and "
      f"{len(rack_keys)} rack keys held against the reader, {len(old)} files of past versions: "
      + (f"{len(failures)} FAILED" if failures else "all hold"))
sys.exit(1 if failures else 0)
