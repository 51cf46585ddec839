#!/usr/bin/env python3
"""Help, man page and completions say the same, so that none of them falls behind.

    tests/promises.py PROGRAM        run in the root folder

Every option and word that `--help` prints stands in the man page under its command and in each completion, and the other
way round.
"""
import re
import subprocess
import sys
from pathlib import Path

PROGRAM = sys.argv[1]
failures = 0


def differ(where, theirs, ours):
    global failures
    for one in sorted(ours - theirs):
        failures += 1
        print(f"FAILED: {where}: {one} is missing; --help has it")
    for one in sorted(theirs - ours):
        failures += 1
        print(f"FAILED: {where}: {one} is told of; --help has it not")


def help_of(*words):
    return subprocess.run([PROGRAM, *words, "--help"], capture_output=True, text=True, check=True).stdout


def options_of(text):
    """{"--json"}, and {"--prefer": {"lightest", ...}} for those that take one of some words."""
    found = {}
    for line in text.split("Options:")[1].split("Subcommands:")[0].splitlines():
        if not line.startswith("  -"):
            continue
        names = line.split()[0]
        words = re.search(r":\{([^}]*)\}", line)
        for name in names.split(","):
            found[name] = set(words.group(1).split(",")) if words else set()
    return found


top = help_of()
commands = re.findall(r"^  (\w+) ", top.split("Subcommands:")[1], re.M)
assert len(commands) >= 8, top
options = {command: options_of(help_of(command)) for command in commands}
general = options_of(top)

# --- The man page
man = Path("resources/man/platewright.1").read_text(encoding="utf-8").replace("\\-", "-")
man = re.sub(r"\\f.", "", man).replace("\\&", "")
sections = dict(re.findall(r'^\.SS "(\w+)[^\n]*\n(.*?)(?=^\.S[SH])', man, re.M | re.S))
differ("man page", set(sections), set(commands))


def told(text):
    """What a section tells of: the tags after .TP."""
    return {name for tag in re.findall(r"^\.TP\n(.*)$", text, re.M) for name in re.findall(r"(?<![\w-])--?[a-z]\w*", tag)}


for command in commands:
    text = sections.get(command, "")
    own = {name for name in options[command] if name not in ("-h", "--help")}
    differ(f"man page, {command}", told(text), own)
    for name, words in options[command].items():
        for word in words:
            if not re.search(rf"(?<![\w-]){re.escape(word)}(?![\w-])", text):
                differ(f"man page, {command}", set(), {f"{name} {word}"})
    # The line above the section says how it is called.
    line = re.search(rf'^\.SS "{command}([^\n]*)"', man, re.M)
    if line:
        for name in re.findall(r"(?<![\w-])--?[a-z]\w*", line.group(1)):
            if name not in options[command]:
                differ(f"man page, {command}", {name}, set())
differ("man page, OPTIONS", told(re.search(r"^\.SH OPTIONS\n(.*?)^\.SH", man, re.M | re.S).group(1)), set(general))
for status in "012":
    if not re.search(rf"^\.B {status}$", man, re.M):
        differ("man page", set(), {f"exit status {status}"})


# --- bash, as bash itself answers
def bash(*words):
    script = ("source resources/completion/platewright.bash; COMP_WORDS=(platewright \"$@\"); COMP_CWORD=$#; "
              "_platewright; printf '%s\\n' \"${COMPREPLY[@]}\"")
    return set(subprocess.run(["bash", "-c", script, "bash", *words], capture_output=True, text=True,
                              check=True).stdout.split())


def long_ones(found):
    return {name for name in found if name.startswith("--")}


differ("bash, commands", bash("") & set(commands), set(commands))
differ("bash", bash("-"), long_ones(general))
for command in commands:
    differ(f"bash, {command}", bash(command, "-"), long_ones(options[command]))
    for name, words in options[command].items():
        if words:
            differ(f"bash, {command} {name}", bash(command, name, ""), words)

# --- fish and zsh, by their text
fish = Path("resources/completion/platewright.fish").read_text(encoding="utf-8")
differ("fish, commands", set(re.findall(r"__fish_use_subcommand -a (\w+)", fish)), set(commands))
zsh = Path("resources/completion/_platewright").read_text(encoding="utf-8")
differ("zsh, commands", set(re.findall(r"^    '(\w+):", zsh, re.M)), set(commands))
for command in commands:
    mine = [line for line in fish.splitlines() if f"seen_subcommand_from {command}'" in line]
    differ(f"fish, {command}", {"--" + one for line in mine for one in re.findall(r" -l (\S+)", line)},
           long_ones(options[command]))
    block = re.search(rf"^  {command}\)\n(.*?);;", zsh, re.M | re.S).group(1)
    listed = {one for one in re.findall(r"(?:^|[\s')*,{])(--[a-z]\w*)(?==?[\[}])", block)}
    listed |= {"--help"} if "{-h,--help}" in block else set()
    differ(f"zsh, {command}", listed, long_ones(options[command]))
    for name, words in options[command].items():
        for word in words:
            for shell, text in (("fish", "\n".join(mine)), ("zsh", block)):
                if not re.search(rf"(?<![\w-]){re.escape(word)}(?![\w-])", text):
                    differ(f"{shell}, {command}", set(), {f"{name} {word}"})

# --- README's list of commands
readme = Path("README.md").read_text(encoding="utf-8")
differ("README", set(re.findall(r"^platewright ([a-z]+) ", readme, re.M)), set(commands))

count = sum(len(one) for one in options.values())
print(f"promises: {len(commands)} commands with {count} options: {f'{failures} FAILED' if failures else 'all say the same'}")
sys.exit(1 if failures else 0)
