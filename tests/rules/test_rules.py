"""Every legal figure says where it comes from and how far it can be trusted."""

import json

import pytest

from tests.conftest import ROOT

FILES = sorted((ROOT / "server" / "rules").glob("*.json"))
STATUSES = {"read", "secondary", "memory", "setting"}
HEAD = {"id", "jurisdiction", "topic", "title", "note"}


def load(path):
    return json.loads(path.read_text(encoding="utf-8"))


def is_number(value):
    return isinstance(value, int | float) and not isinstance(value, bool)


def problems(node, where=""):
    """Return what is wrong with the figures in a tree of rules."""
    if isinstance(node, list):
        return [
            p for i, item in enumerate(node) for p in problems(item, f"{where}/{i}")
        ]
    if is_number(node):
        return [f"{where}: a number outside a figure"]
    if not isinstance(node, dict):
        return []
    if "value" in node or "status" in node:
        return [f"{where}: {text}" for text in figure_problems(node)]
    return [p for key in node for p in problems(node[key], f"{where}/{key}")]


def figure_problems(figure):
    found = []
    for key in ("source", "edition"):
        if not isinstance(figure.get(key), str) or not figure[key].strip():
            found.append(f"no {key}")
    if figure.get("status") not in STATUSES:
        found.append(f"status {figure.get('status')!r}")
    if "date" not in figure:
        found.append("no date")
    elif figure["date"] is None:
        # A date that nobody noted is said to be so, never made up.
        words = figure.get("edition") or ""
        if not words.startswith(("not noted", "not read", "French text")):
            found.append("no date, and the edition does not say why")
    if figure.get("status") == "memory" and figure.get("edition") != "not read":
        found.append("from memory, yet with an edition")
    return found


def figures(node):
    if isinstance(node, list):
        return [f for item in node for f in figures(item)]
    if not isinstance(node, dict):
        return []
    if "value" in node:
        return [node]
    return [f for item in node.values() for f in figures(item)]


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.stem)
def test_every_figure_has_source_edition_date_and_status(path):
    assert problems(load(path)) == []


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.stem)
def test_every_file_says_what_it_is(path):
    rules = load(path)
    assert set(rules) >= HEAD
    assert rules["id"] == path.stem
    assert figures(rules)


def test_the_topics_are_there():
    assert {path.stem for path in FILES} == {
        "brine",
        "codex",
        "eu_uk_heat_treatment",
        "eu_uk_milk_receiving",
        "matters",
        "milk_classes",
        "slow_make",
        "staph",
        "us_curing",
        "us_heat_treatment",
        "us_identity",
        "us_milk_receiving",
    }


FIGURE = {
    "value": 63,
    "source": "21 CFR 1240.61(b)",
    "edition": "CFR 2010",
    "date": "2010-04-01",
    "status": "read",
}


def test_a_true_figure_passes():
    assert problems({"min_temp": {"C": FIGURE}}) == []


@pytest.mark.parametrize(
    ("change", "words"),
    [
        ({"source": ""}, "no source"),
        ({"edition": None}, "no edition"),
        ({"status": "sure"}, "status 'sure'"),
        ({"date": None}, "the edition does not say why"),
        ({"status": "memory"}, "from memory, yet with an edition"),
    ],
)
def test_a_planted_fault_is_found(change, words):
    (problem,) = problems({"min_temp": {"C": dict(FIGURE, **change)}})
    assert words in problem


def test_a_bare_number_is_found():
    assert problems({"rows": [{"hold_s": 15}]}) == [
        "/rows/0/hold_s: a number outside a figure"
    ]


def test_fractions_are_fractions():
    for path in FILES:
        for name, value in named_values(load(path)):
            if name.endswith("_frac"):
                assert 0 <= value <= 1, (path.stem, name, value)


def named_values(node, name=""):
    if isinstance(node, list):
        return [pair for item in node for pair in named_values(item, name)]
    if not isinstance(node, dict):
        return []
    if "value" in node:
        return [(name, node["value"])]
    return [pair for key in node for pair in named_values(node[key], key)]


def test_what_was_not_read_stays_marked():
    """Rows known only from memory must not become law by an edit in passing."""
    rows = {row["key"]: row for row in load_by_name("codex")["rows"]}
    for key in ("gouda", "edam", "cheddar"):
        for figure in rows[key]["figures"].values():
            assert figure["status"] == "memory"
    us = {row["key"]: row for row in load_by_name("us_identity")["rows"]}
    assert us["washed_curd"]["figures"]["moisture_max_frac"]["status"] == "memory"


def load_by_name(name):
    return load(ROOT / "server" / "rules" / f"{name}.json")


# 21 CFR part 133: most moisture and least fat of the solids, per cent.
@pytest.mark.parametrize(
    ("key", "section", "moisture", "fdm"),
    [
        ("gouda", "133.142", 45, 46),
        ("edam", "133.138", 45, 40),
        ("cheddar", "133.113", 39, 50),
        ("colby", "133.118", 40, 50),
        ("granular", "133.144", 39, 50),
        ("monterey", "133.153", 44, 50),
        ("brick", "133.108", 44, 50),
        ("muenster", "133.160", 46, 50),
        ("swiss", "133.195", 41, 43),
        ("gruyere", "133.149", 39, 45),
        ("gorgonzola", "133.141", 42, 50),
        ("asiago_medium", "133.103", 35, 45),
        ("parmesan", "133.165", 32, 32),
        ("romano", "133.183", 34, 38),
        ("hard_grating", "133.148", 34, 32),
        ("hard", "133.150", 39, 50),
        ("semisoft", "133.187", 50, 50),
        ("limburger", "133.152", 50, 50),
        ("mozzarella", "133.155", 60, 45),
        ("mozzarella_low_moisture", "133.156", 52, 45),
    ],
)
def test_identity_rows_carry_the_printed_figures(key, section, moisture, fdm):
    rows = {row["key"]: row for row in load_by_name("us_identity")["rows"]}
    row = rows[key]
    assert row["section"] == f"21 CFR {section}"
    assert row["figures"]["moisture_max_frac"]["value"] * 100 == pytest.approx(moisture)
    assert row["figures"]["fdm_min_frac"]["value"] * 100 == pytest.approx(fdm)
    for figure in row["figures"].values():
        assert figure["status"] == "read"


def test_what_was_read_where_another_quotes_it_is_never_called_read():
    # Regulation (EC) 2073/2005: known from texts that quote it.
    cited = [
        figure
        for path in FILES
        for figure in figures(load(path))
        if figure["source"] == "ec_2073_2005_amended"
    ]
    assert len(cited) > 20
    assert {figure["status"] for figure in cited} <= {"secondary", "memory"}
