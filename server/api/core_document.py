"""The core as a phone gets it: its files, and the rules, in two JSON documents.

The first holds what Now and Make need to start; what is asked for later (the sums,
trends, the course of a make, the check of recipes, what gates wait for) comes in
quiet time, when it is asked for, or at once where a make is open, whose figures sums
answer. Which file goes where is read off the imports: what `FIRST` loads by being
loaded is first. Of the rules, those that lead a make come first, all others with the
sums.

They are the second largest thing that a phone loads. Set-up squeezes them as small
as can be, which takes seconds, and a stamp ties each copy to the very bytes that the
server would send; an edited checkout sends its own. It needs the standard library
alone, because set-up loads it by its place.
"""

import ast
import hashlib
import json
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

CORE, LATER = "core.json", "core-later.json"
BESIDE = ("host.py", "shelf.py")  # the page's own, which start the core
# Of rules: those that lead a make, see `core.desk.makes`.
FIRST_TOPICS = (
    "heat_treatment",
    "milk_class",
    "matters",
    "curing",
    "slow_make",
    "microbiology",
)
WORDS = ("note", "edition")  # of rules; the server's files keep them
# Wings that no phone asks yet: they would only weigh.
HERE_ONLY = ("twin",)
# What a page asks at its start, and what the desk loads itself to lead a make. What
# curd, acid and a hold are judged by comes with the sums.
FIRST = (
    "desk",
    "alarm.alarms",
    "alarm.sound",
)


def copy_of(name: str) -> str:
    """Return where set-up keeps the squeezed copy of a document.

    Args:
        name: CORE or LATER.
    """
    return f"lib/{name}.br"


def stamp_of(name: str) -> str:
    """Return where set-up keeps the stamp of a squeezed copy.

    Args:
        name: CORE or LATER.
    """
    return f"lib/.{name}-stamp"


def core_texts(
    static_dir: Path, core_dir: Path, text_of: Callable[[Path], str]
) -> dict[str, str]:
    """Return each file of the core by the name that it has on the phone.

    Args:
        static_dir: folder of the page, which holds what starts the core.
        core_dir: folder of the core's Python files.
        text_of: gives a file's text as it is sent, see `bare_python`.
    """
    names = {
        path.relative_to(core_dir).as_posix(): path
        for path in sorted(core_dir.rglob("*.py"))
    }
    texts = {
        "core/" + name: text_of(path)
        for name, path in names.items()
        if name.split("/")[0] not in HERE_ONLY
    }
    for name in BESIDE:
        texts[name] = text_of(static_dir / "js" / "core" / name)
    return texts


def rules_of(rules_dir: Path) -> dict[str, Any]:
    """Return the legal figures by the id of their rule, as the core takes them.

    Args:
        rules_dir: folder of the rules.
    """
    paths = sorted(rules_dir.glob("*.json"))
    found = [json.loads(path.read_text("utf-8")) for path in paths]
    return {rule["id"]: rule for rule in found}


def version_of(texts: dict[str, str], rules: dict[str, Any]) -> str:
    """Return the fingerprint of the whole core.

    Args:
        texts: as from `core_texts`.
        rules: as from `rules_of`.
    """
    whole = json.dumps({"files": texts, "rules": rules}, sort_keys=True)
    return hashlib.sha256(whole.encode()).hexdigest()[:16]


def bodies_of(texts: dict[str, str], rules: dict[str, Any]) -> dict[str, bytes]:
    """Return the documents as they are sent, before they are compressed.

    Both carry the version of the whole, so that a phone never joins the parts of
    two cores. The words of the rules stay at home: no answer of the core holds them.

    Args:
        texts: as from `core_texts`.
        rules: as from `rules_of`.
    """
    version, first = version_of(texts, rules), first_files(texts)
    parts: dict[str, dict[str, Any]] = {
        CORE: {"files": {name: texts[name] for name in texts if name in first}},
        LATER: {"files": {name: texts[name] for name in texts if name not in first}},
    }
    for name, part in parts.items():
        part["rules"] = {
            key: _figures_of(rules[key])
            for key in rules
            if (rules[key]["topic"] in FIRST_TOPICS) == (name == CORE)
        }
    return {
        name: json.dumps({"version": version, **part}, separators=(",", ":")).encode()
        for name, part in parts.items()
    }


def _figures_of(value: Any) -> Any:
    """Return a rule without what it says to who reads its file alone."""
    if isinstance(value, dict):
        return {key: _figures_of(value[key]) for key in value if key not in WORDS}
    if isinstance(value, list):
        return [_figures_of(one) for one in value]
    return value


def first_files(texts: dict[str, str]) -> set[str]:
    """Return the names of the files that the first document holds.

    Args:
        texts: as from `core_texts`.
    """
    found = set(BESIDE)
    asked = [path for name in FIRST for path in _paths_of(name)]
    while asked:
        name = asked.pop()
        if name in found or name not in texts:
            continue
        found.add(name)
        folders = Path(name).parents
        asked += [f"{folder.as_posix()}/__init__.py" for folder in folders]
        asked += _imported(name, texts[name])
    return found


def _paths_of(name: str) -> tuple[str, str]:
    """Return where a module or a package of the core may lie."""
    path = "core/" + name.replace(".", "/")
    return f"{path}.py", f"{path}/__init__.py"


def _imported(name: str, text: str) -> Iterator[str]:
    """Yield what may be the files that a module loads by being loaded."""
    for node in ast.parse(text).body:
        if isinstance(node, ast.ImportFrom) and node.level:
            folder = Path(name).parents[node.level - 1]
            path = folder.joinpath(*(node.module or "").split("."))
            yield f"{path.as_posix()}.py"
            yield from (f"{(path / one.name).as_posix()}.py" for one in node.names)


def mark_of(body: bytes) -> str:
    """Return what the stamp says of a squeezed copy.

    Args:
        body: one of `bodies_of`.
    """
    return hashlib.sha256(body).hexdigest()


def squeezed(static_dir: Path, name: str, body: bytes) -> bytes | None:
    """Return the copy that set-up squeezed, when it is of these very bytes.

    Args:
        static_dir: folder of the page.
        name: CORE or LATER.
        body: what `bodies_of` gives under that name.
    """
    stamp, copy = static_dir / stamp_of(name), static_dir / copy_of(name)
    if not stamp.is_file() or not copy.is_file():
        return None
    return copy.read_bytes() if stamp.read_text("utf-8") == mark_of(body) else None
