"""What a figure rests on is an id of the catalogues, or a reference as it stands."""

import ast
import json
import re

from server.config import read_rules
from server.core.formulas.heat import lethality
from server.core.sums import catalogue
from tests.conftest import ROOT

CORE = ROOT / "server" / "core"
MESSAGES = ROOT / "static" / "js" / "messages"
SOURCE = re.compile(r'^  "source\.(\w+)":', re.M)
RETIRED = re.compile(r'^  "retired\.(\w+)":', re.M)
# A title of a law or a book without a word of ours is said alike everywhere.
WORD = re.compile(r"\b[a-z]{2,}\b")
TITLES = {"California Code of Regulations", "Code of Federal Regulations"}
ADDRESS = re.compile(r"www\.\S+|[\w.]+/\S+")
# Where a source stands among the arguments.
CALLS = {"default": 2, "rests": 4, "from_recipe": 2}


def known():
    return SOURCE.findall((MESSAGES / "en" / "sources.js").read_text("utf-8"))


def under(value, names):
    if isinstance(value, (list, tuple)):
        return [text for row in value for text in under(row, names)]
    if not isinstance(value, dict):
        return []
    own = [value[name] for name in names if isinstance(value.get(name), str)]
    return own + under(list(value.values()), names)


def recipes():
    """Return the recipes' sources by title and place, and the notes of figures."""
    files = sorted((ROOT / "server" / "recipes").glob("*.json"))
    told = [json.loads(path.read_text("utf-8")) for path in files]
    assert told
    titles = under([recipe["sources"] for recipe in told], ["title", "where"])
    return titles + under(told, ["note"])


def code():
    """Yield every file of the wings that name sources, as text."""
    for wing in ("sums", "known", "formulas/heat"):
        for path in sorted((CORE / wing).rglob("*.py")):
            yield path.read_text("utf-8")


def said():
    """Return the words that the sums hand to `default`, `rests` and `from_recipe`."""
    found = []
    for text in code():
        for call in ast.walk(ast.parse(text)):
            name = getattr(getattr(call, "func", None), "id", "")
            if name in CALLS and len(call.args) > CALLS[name]:
                found.append(getattr(call.args[CALLS[name]], "value", None))
    return [word for word in found if isinstance(word, str)]


def sources():
    defaults = under([row["inputs"] for row in catalogue.rows()], ["source"])
    rules = under(list(read_rules().values()), ["source", "section"])
    published = under(lethality.PUBLISHED, ["source"])
    return {*defaults, *rules, *published, *recipes(), *said()}


def test_the_core_names_what_its_figures_rest_on():
    assert {"washed_curd_store", "two_published_gouda_sources"} <= sources()
    assert {
        "pmo_appendix_n",
        "guelph_food_science_gouda",
        "21 CFR 133.142",
    } <= sources()


def test_every_source_of_a_figure_is_in_the_catalogues_or_a_reference():
    unknown = {text for text in sources() - set(known()) if WORD.search(text)}
    assert [text for text in sorted(unknown - TITLES) if not ADDRESS.match(text)] == []


def retired():
    return RETIRED.findall((MESSAGES / "en" / "retired.js").read_text("utf-8"))


def test_what_is_retired_is_named_no_more_and_still_has_its_words():
    assert len(retired()) == len(set(retired()))
    assert sorted(set(retired()) & sources()) == []
    assert sorted(set(retired()) & set(known())) == []
    # Recipe version 1 of the washed wheel, as makes have frozen it.
    assert {"printed_gouda_curve", "published_brine_days"} <= set(retired())


def test_every_source_in_the_catalogues_is_named_somewhere():
    named = sources()
    for text in code():
        named |= set(re.findall(r'"(\w+)"', text))
    assert sorted(set(known()) - named) == []
