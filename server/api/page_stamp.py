"""Whether the packed page is made of the files that lie beside it.

The page is written as some hundred small modules. A phone at four times slow-down
spends a second on asking for them one after another, so set-up packs them: what Now
and Make need into the page and one part that it shares, the other screens into parts
that come later. The names of parts change with what is in them, so that a page never
takes a part of another version. This stamp ties the pack to its sources: the server
sends the pack only while it matches, and the plain modules otherwise. It needs the
standard library alone, because the build hook loads it by its place.
"""

import hashlib
import json
from pathlib import Path
from typing import Any

SOURCES = ("js", "css")
MODULES = (".js", ".css")
PACK = ("lib/first.js", "lib/page.js", "lib/page.css")
# Each language packed by itself, fetched when a person reads it; of English what
# does not come with the page.
LANGUAGES = ("lib/lang-en.js", "lib/lang-es.js", "lib/lang-fr.js")
# The rules of the screens that come later, which wait for it.
LATER_STYLE = "lib/later.css"
STAMP = "lib/.page-stamp"


def sources_stamp(static_dir: Path) -> str:
    """Return the fingerprint of every module and style of the page.

    Args:
        static_dir: folder of the page.
    """
    digest = hashlib.sha256()
    for folder in SOURCES:
        for path in sorted((static_dir / folder).rglob("*")):
            if path.suffix in MODULES:
                digest.update(path.relative_to(static_dir).as_posix().encode())
                digest.update(hashlib.sha256(path.read_bytes()).digest())
    return digest.hexdigest()


def stamp_of(sources: str, first: list[str], later: list[str]) -> str:
    """Return what the stamp of a pack says.

    Args:
        sources: fingerprint of what it was made of.
        first: names of the parts that the page loads by being loaded.
        later: names of the parts that it asks for when it needs them.
    """
    return json.dumps({"sources": sources, "first": first, "later": later})


def parts_of(static_dir: Path) -> tuple[list[str], list[str]]:
    """Return the names of the parts that the page loads at once, and of those later.

    Args:
        static_dir: folder of the page.
    """
    stamp = _stamp(static_dir)
    return stamp.get("first", []), stamp.get("later", [])


def _stamp(static_dir: Path) -> dict[str, Any]:
    try:
        stamp: Any = json.loads((static_dir / STAMP).read_text("utf-8"))
    except (OSError, ValueError):  # none, or one of another version of set-up
        return {}
    return stamp if isinstance(stamp, dict) else {}


def is_packed(static_dir: Path) -> bool:
    """Tell whether a pack lies there that is made of today's sources.

    Args:
        static_dir: folder of the page.
    """
    first, later = parts_of(static_dir)
    made = (*PACK, *LANGUAGES, LATER_STYLE, *first, *later)
    if not all((static_dir / name).is_file() for name in made):
        return False
    return _stamp(static_dir).get("sources") == sources_stamp(static_dir)
