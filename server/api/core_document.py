"""The core as a phone gets it: all its files, and the rules, in one JSON document.

It is the second largest thing that a phone loads. Set-up squeezes it as small as
can be, which takes seconds, and a stamp ties that copy to the very bytes that the
server would send; an edited checkout sends its own. It needs the standard library
alone, because set-up loads it by its place.
"""

import hashlib
import json
from collections.abc import Callable
from pathlib import Path
from typing import Any

SQUEEZED = "lib/core.json.br"
STAMP = "lib/.core-stamp"


def core_texts(
    static_dir: Path, core_dir: Path, text_of: Callable[[Path], str]
) -> dict[str, str]:
    """Return each file of the core by the name that it has on the phone.

    Args:
        static_dir: folder of the page, which holds what starts the core.
        core_dir: folder of the core's Python files.
        text_of: gives a file's text as it is sent, see `bare_python`.
    """
    texts = {
        "core/" + path.relative_to(core_dir).as_posix(): text_of(path)
        for path in sorted(core_dir.rglob("*.py"))
    }
    texts["host.py"] = text_of(static_dir / "js" / "core" / "host.py")
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
    """Return the document's own fingerprint.

    Args:
        texts: as from `core_texts`.
        rules: as from `rules_of`.
    """
    whole = json.dumps({"files": texts, "rules": rules}, sort_keys=True)
    return hashlib.sha256(whole.encode()).hexdigest()[:16]


def body_of(texts: dict[str, str], rules: dict[str, Any]) -> bytes:
    """Return the document as it is sent, before it is compressed.

    Args:
        texts: as from `core_texts`.
        rules: as from `rules_of`.
    """
    version = version_of(texts, rules)
    return json.dumps({"version": version, "files": texts, "rules": rules}).encode()


def mark_of(body: bytes) -> str:
    """Return what the stamp says of a squeezed copy.

    Args:
        body: as from `body_of`.
    """
    return hashlib.sha256(body).hexdigest()


def squeezed(static_dir: Path, body: bytes) -> bytes | None:
    """Return the copy that set-up squeezed, when it is of these very bytes.

    Args:
        static_dir: folder of the page.
        body: as from `body_of`.
    """
    stamp, copy = static_dir / STAMP, static_dir / SQUEEZED
    if not stamp.is_file() or not copy.is_file():
        return None
    return copy.read_bytes() if stamp.read_text("utf-8") == mark_of(body) else None
