"""Whether the packed page is made of the files that lie beside it.

The page is written as some eighty small modules. A phone at four times
slow-down spends a second on asking for them one after another, so set-up packs
them into one file. This stamp ties the pack to its sources: the server sends
the pack only while it matches, and the plain modules otherwise. It needs the
standard library alone, because the build hook loads it by its place.
"""

import hashlib
from pathlib import Path

SOURCES = ("js", "css")
MODULES = (".js", ".css")
PACK = ("lib/first.js", "lib/page.js", "lib/page.css")
# Each language packed by itself, fetched when a person reads it; of English what
# does not come with the page.
LANGUAGES = ("lib/lang-en.js", "lib/lang-es.js", "lib/lang-fr.js")
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


def is_packed(static_dir: Path) -> bool:
    """Tell whether a pack lies there that is made of today's sources.

    Args:
        static_dir: folder of the page.
    """
    stamp = static_dir / STAMP
    made = (static_dir / name for name in (*PACK, *LANGUAGES))
    if not stamp.is_file() or not all(path.is_file() for path in made):
        return False
    return stamp.read_text("utf-8") == sources_stamp(static_dir)
