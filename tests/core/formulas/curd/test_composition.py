import json

import pytest
from hypothesis import given
from hypothesis import strategies as st

from server.core.formulas.curd import composition
from tests.conftest import ROOT


def rules(name):
    path = ROOT / "server" / "rules" / f"{name}.json"
    return json.loads(path.read_text(encoding="utf-8"))


CODEX = rules("codex")


def classes(core, value, table):
    return core("formulas.curd.composition", "classes", value, CODEX[table])["classes"]


@pytest.mark.parametrize(("fat", "percent"), [(0.2999, 51.71), (0.2530, 43.62)])
def test_fdm_of_a_salted_cheese(core, fat, percent):
    # 29.99 of 58 parts and 25.30 of 58 parts of solids.
    found = core("formulas.curd.composition", "fdm_frac", fat, 0.42)
    assert found * 100 == pytest.approx(percent, abs=6e-3)


def test_moisture_and_salt_of_a_salted_cheese(core):
    found = core("formulas.curd.composition", "mnfs_frac", 0.42, 0.2999)
    assert found * 100 == pytest.approx(59.99, abs=6e-3)
    found = core("formulas.curd.composition", "salt_in_moisture_frac", 0.018, 0.42)
    assert found * 100 == pytest.approx(4.29, abs=6e-3)


@pytest.mark.parametrize(
    ("percent", "expected"),
    [
        (55, ["hard", "semi_hard"]),
        (50, ["extra_hard", "hard"]),
        (51, ["hard"]),
        (49, ["extra_hard", "hard"]),
        (56, ["hard", "semi_hard"]),
        (60.2, ["semi_hard"]),
        (61, ["semi_hard", "semi_soft"]),
        (67, ["semi_soft"]),
        (68, ["semi_soft", "soft"]),
        (75, ["soft"]),
    ],
)
def test_firmness_is_a_set_of_classes(core, percent, expected):
    assert classes(core, percent / 100, "firmness") == expected


@pytest.mark.parametrize(
    ("percent", "expected"),
    [(61, ["high_fat"]), (48, ["full_fat"]), (30, ["medium_fat"]), (9, ["skim"])],
)
def test_fat_class(core, percent, expected):
    assert classes(core, percent / 100, "fat") == expected


def test_the_current_codex_table_is_from_memory_and_names_no_class(core):
    found = core(
        "formulas.curd.composition", "classes", 0.60, CODEX["firmness_current"]
    )
    assert found == {"verdict": "not_assessed", "classes": []}


@given(st.floats(0, 1))
def test_every_moisture_has_a_firmness(value):
    assert composition.classes(value, CODEX["firmness"])["classes"]


@given(st.floats(0.2, 0.6), st.floats(0.05, 0.35))
def test_fat_and_fdm_lead_back_to_each_other(moisture, fat):
    fdm = composition.fdm_frac(fat, moisture)
    assert composition.fat_for_fdm_frac(fdm, moisture) == pytest.approx(fat)


@given(st.floats(0.2, 0.6), st.floats(0.05, 0.35))
def test_fdm_and_mnfs_close(moisture, fat):
    # Protein and the rest are what neither fat nor moisture is.
    rest = 1 - moisture - fat
    assert (1 - composition.fdm_frac(fat, moisture)) * (1 - moisture) == (
        pytest.approx(rest)
    )
    assert (1 - composition.mnfs_frac(moisture, fat)) * (1 - fat) == (
        pytest.approx(rest)
    )


@pytest.mark.parametrize(
    ("name", "arguments", "words"),
    [
        ("fdm_frac", [25.3, 0.45], r"fat_frac 25.3 above 1"),
        ("fdm_frac", [0.6, 0.5], r"fat_frac 0.6 more_than_cheese 0.5"),
        ("mnfs_frac", [1, 0], r"moisture_frac 1 no_cheese"),
        ("salt_in_moisture_frac", [0.02, 0], r"moisture_frac 0 not_above 0"),
        ("classes", [55, []], r"value_frac 55 above 1"),
    ],
)
def test_impossible_figures_are_refused_in_words(core, name, arguments, words):
    with pytest.raises(ValueError, match=words):
        core("formulas.curd.composition", name, *arguments)
