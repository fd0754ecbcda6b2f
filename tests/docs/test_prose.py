"""What a figure rests on is said by the core in English and shown in each language."""

import ast
import json
import re
import subprocess
from importlib import import_module
from pathlib import Path

import pytest

from server.core.formulas.heat import lethality
from server.core.sums import catalogue
from tests.conftest import find_node

ROOT = Path(__file__).parents[2]
CORE = ROOT / "server" / "core"
SUMS = sorted([*(CORE / "sums").rglob("*.py"), *(CORE / "known").glob("*.py")])
LANGUAGES = ("es", "fr")
# A title of a law or a book without a word of ours stays as it is; so does a unit.
WORD = re.compile(r"\b[a-z]{2,}\b")
AS_THEY_ARE = {
    "J/(kg K)",
    "California Code of Regulations",
    "Code of Federal Regulations",
}


def pack(code, name):
    """Return one table of a language, as the page has it."""
    address = (ROOT / "static/js/messages" / code / "index.js").as_uri()
    script = f"import('{address}').then((m) => console.log(JSON.stringify(m.{name})))"
    done = subprocess.run(
        [find_node(), "-e", script], capture_output=True, text=True, check=True
    )
    return json.loads(done.stdout)


def under(value, names):
    if isinstance(value, (list, tuple)):
        return [text for row in value for text in under(row, names)]
    if not isinstance(value, dict):
        return []
    own = [value[name] for name in names if isinstance(value.get(name), str)]
    return own + under(list(value.values()), names)


def defaults():
    """Return the sources of all defaults of all sums, of columns too."""
    return under([row["inputs"] for row in catalogue.rows()], ["source"])


def rules():
    files = sorted((ROOT / "server" / "rules").glob("*.json"))
    assert files
    told = [json.loads(path.read_text(encoding="utf-8")) for path in files]
    return under(told, ["source", "section"])


def recipes():
    """Return the recipes' sources by title and place, and the notes of figures."""
    files = sorted((ROOT / "server" / "recipes").glob("*.json"))
    told = [json.loads(path.read_text(encoding="utf-8")) for path in files]
    sources = under([one["sources"] for one in told], ["title", "where"])
    return sources + under(told, ["note"])


def said():
    """Return the words that the sums hand to `rests` and `from_recipe`."""
    found = []
    for path in SUMS:
        name = ".".join(path.relative_to(ROOT).with_suffix("").parts)
        module = import_module(name)
        for call in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            name = getattr(getattr(call, "func", None), "id", "")
            if name not in ("rests", "from_recipe"):
                continue
            for given in call.args:
                value = getattr(given, "value", None)
                value = getattr(module, getattr(given, "id", ""), value)
                found.extend([value] if isinstance(value, str) else [])
    return found


def sources():
    published = under(lethality.PUBLISHED, ["source"])
    texts = {*defaults(), *rules(), *recipes(), *published, *said()}
    return {text for text in texts if " " in text and WORD.search(text)} - AS_THEY_ARE


def figures(text):
    """Return the figures in a text; "2,5" and "2.5" are one."""
    return [
        re.sub(r"[.,\s]", "", one)
        for one in re.findall(r"\d[\d.,]*", text.replace("²", "2"))
    ]


def test_the_core_says_what_its_figures_rest_on():
    assert {"a washed-curd store", "two published Gouda sources"} <= sources()
    assert "Pasteurized Milk Ordinance, appendix N" in sources()


@pytest.mark.parametrize("code", LANGUAGES)
def test_every_source_of_a_figure_has_words_in_each_language(code):
    prose = pack(code, "PROSE")
    assert sorted(text for text in sources() if not prose.get(text)) == []


@pytest.mark.parametrize("code", LANGUAGES)
def test_a_source_keeps_its_figures_in_each_language(code):
    unlike = [
        text
        for text, own in pack(code, "PROSE").items()
        if figures(text) != figures(own)
    ]
    assert unlike == []
