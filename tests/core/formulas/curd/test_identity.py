import copy
import json

import pytest

from server.core.formulas.curd import identity
from tests.conftest import ROOT


def rules(name):
    path = ROOT / "server" / "rules" / f"{name}.json"
    return json.loads(path.read_text(encoding="utf-8"))


US = {row["key"]: row for row in rules("us_identity")["rows"]}
CODEX = rules("codex")
CODEX_ROWS = {row["key"]: row for row in CODEX["rows"]}


def check(core, rule, **cheese):
    return core("formulas.curd.identity", "check_identity", cheese, rule)


def lines(found, verdict):
    return [line["key"] for line in found["figures"] if line["verdict"] == verdict]


def classes(core, value, table):
    return core("formulas.curd.identity", "classes", value, CODEX[table])["classes"]


def test_gouda_at_its_limits(core):
    # 25.3 of 55 parts of solids is 46 %; 45 of 74.7 parts without fat is 60.2 %.
    assert core("formulas.curd.composition", "fdm_frac", 0.253, 0.45) == pytest.approx(
        0.46
    )
    assert core("formulas.curd.composition", "mnfs_frac", 0.45, 0.253) == pytest.approx(
        0.602, abs=5e-4
    )
    found = check(
        core, US["gouda"], moisture_frac=0.45, fat_frac=0.253, is_pasteurised=True
    )
    assert found["verdict"] == "meets"


def test_a_tenth_of_a_per_cent_of_moisture_fails_gouda(core):
    found = check(
        core, US["gouda"], moisture_frac=0.451, fat_frac=0.253, is_pasteurised=True
    )
    assert found["verdict"] == "does_not_meet"
    assert lines(found, "does_not_meet") == ["moisture_max_frac"]
    line = found["figures"][0]
    assert (line["value"], line["limit"], line["status"]) == (0.451, 0.45, "read")


def test_47_per_cent_of_moisture_fails_us_gouda_and_codex_is_from_memory(core):
    cheese = {"moisture_frac": 0.47, "fat_frac": 0.244, "is_pasteurised": True}
    assert check(core, US["gouda"], **cheese)["verdict"] == "does_not_meet"
    codex = check(core, CODEX_ROWS["gouda"], **cheese)
    assert codex["verdict"] == "not_assessed"
    # The figures are still shown: 53 % dry matter against 52 %.
    (line,) = [f for f in codex["figures"] if f["key"] == "dry_matter_min_frac"]
    assert line["value"] == pytest.approx(0.53)
    assert (line["limit"], line["verdict"]) == (0.52, "not_assessed")


def test_the_codex_table_would_decide_if_it_had_been_read(core):
    read = copy.deepcopy(CODEX_ROWS["gouda"])
    text = json.dumps(read).replace('"memory"', '"read"')
    cheese = {"moisture_frac": 0.47, "fat_frac": 0.244, "is_pasteurised": True}
    assert check(core, json.loads(text), **cheese)["verdict"] == "meets"
    wetter = dict(cheese, moisture_frac=0.485, fat_frac=0.24)
    found = check(core, json.loads(text), **wetter)
    assert lines(found, "does_not_meet") == ["dry_matter_min_frac"]


def test_40_per_cent_fdm_is_edam_and_not_gouda(core):
    cheese = {"moisture_frac": 0.45, "fat_frac": 0.22, "is_pasteurised": True}
    gouda = check(core, US["gouda"], **cheese)
    assert lines(gouda, "does_not_meet") == ["fdm_min_frac"]
    assert check(core, US["edam"], **cheese)["verdict"] == "meets"


CHEDDAR = {"moisture_frac": 0.38, "fat_frac": 0.32}


@pytest.mark.parametrize(
    ("is_pasteurised", "days", "verdict"),
    [
        (False, 59, "does_not_meet"),
        (False, 60, "meets"),
        (True, 1, "meets"),
        (True, None, "meets"),
        (None, 59, "not_assessed"),
        (None, 60, "meets"),
        (False, None, "not_assessed"),
    ],
)
def test_raw_cheddar_waits_sixty_days(core, is_pasteurised, days, verdict):
    found = check(
        core,
        US["cheddar"],
        is_pasteurised=is_pasteurised,
        cured_days=days,
        **CHEDDAR,
    )
    assert found["verdict"] == verdict


def test_monterey_from_raw_milk_does_not_meet_whatever_its_age(core):
    found = check(
        core,
        US["monterey"],
        moisture_frac=0.42,
        fat_frac=0.30,
        is_pasteurised=False,
        cured_days=200,
    )
    assert found["verdict"] == "does_not_meet"
    assert lines(found, "does_not_meet") == ["milk"]
    assert US["monterey"]["section"] == "21 CFR 133.153"


@pytest.mark.parametrize(("days", "verdict"), [(75, "does_not_meet"), (90, "meets")])
def test_gruyere_waits_ninety_days_even_from_pasteurised_milk(core, days, verdict):
    found = check(
        core,
        US["gruyere"],
        moisture_frac=0.36,
        fat_frac=0.32,
        is_pasteurised=True,
        cured_days=days,
    )
    assert found["verdict"] == verdict


@pytest.mark.parametrize("missing", ["moisture_frac", "fat_frac"])
def test_what_no_laboratory_measured_is_not_assessed(core, missing):
    cheese = dict(CHEDDAR, is_pasteurised=True)
    cheese[missing] = None
    found = check(core, US["cheddar"], **cheese)
    assert found["verdict"] == "not_assessed"
    del cheese[missing]
    assert check(core, US["cheddar"], **cheese)["verdict"] == "not_assessed"


def test_a_figure_from_memory_is_not_assessed(core):
    # Only the curing text of washed curd cheese was read.
    for moisture in (0.30, 0.50):
        found = check(
            core,
            US["washed_curd"],
            moisture_frac=moisture,
            fat_frac=0.26,
            is_pasteurised=True,
        )
        assert found["verdict"] == "not_assessed"


def test_semisoft_is_wetter_than_39_per_cent(core):
    dry = check(
        core, US["semisoft"], moisture_frac=0.39, fat_frac=0.32, is_pasteurised=True
    )
    assert lines(dry, "does_not_meet") == ["moisture_above_frac"]
    wet = check(
        core, US["semisoft"], moisture_frac=0.392, fat_frac=0.32, is_pasteurised=True
    )
    assert wet["verdict"] == "meets"


def test_part_skim_mozzarella_stays_below_45_per_cent_fdm(core):
    found = check(
        core,
        US["mozzarella_low_moisture_part_skim"],
        moisture_frac=0.48,
        fat_frac=0.45 * 0.52,
        is_pasteurised=True,
    )
    assert lines(found, "does_not_meet") == ["fdm_below_frac"]


def test_a_row_that_asks_nothing_assesses_nothing(core):
    assert check(core, {"figures": {}}, **CHEDDAR)["verdict"] == "not_assessed"


@pytest.mark.parametrize("key", sorted(US))
def test_each_us_row_is_met_on_its_limits_and_not_beyond(key):
    row = json.loads(json.dumps(US[key]).replace('"memory"', '"read"'))
    figures = {name: figure["value"] for name, figure in row["figures"].items()}
    moisture = figures.get("moisture_max_frac", 0.5)
    fdm = figures.get("fdm_min_frac")
    fat = fdm * (1 - moisture) if fdm else figures.get("fat_min_frac", 0.004)
    cheese = {
        "moisture_frac": moisture,
        "fat_frac": fat,
        "is_pasteurised": True,
        "cured_days": row.get("cure", {}).get("days", {}).get("value"),
    }
    assert identity.check_identity(cheese, row)["verdict"] == "meets"
    if "moisture_max_frac" in figures:
        wetter = dict(cheese, moisture_frac=moisture + 1e-4)
        found = identity.check_identity(wetter, row)
        assert "moisture_max_frac" in lines(found, "does_not_meet")
    if fdm:
        leaner = dict(cheese, fat_frac=fat - 1e-4)
        found = identity.check_identity(leaner, row)
        assert "fdm_min_frac" in lines(found, "does_not_meet")


# Seven farmstead Goudas of a published survey: J Milk Sci Biotechnol 34(4), table 3.
@pytest.mark.parametrize(
    ("moisture", "fat"),
    [
        (31.94, 33.35),
        (35.14, 31.34),
        (38.91, 30.13),
        (38.45, 32.22),
        (30.95, 34.59),
        (33.80, 32.60),
        (31.08, 35.44),
    ],
)
def test_real_farmstead_goudas_meet_the_us_figures(core, moisture, fat):
    found = check(
        core,
        US["gouda"],
        moisture_frac=moisture / 100,
        fat_frac=fat / 100,
        is_pasteurised=True,
    )
    assert found["verdict"] == "meets"


@pytest.mark.parametrize(
    ("name", "arguments", "words"),
    [
        (
            "check_identity",
            [{"moisture_frac": 45}, {"figures": {}}],
            r"moisture_frac 45 above 1",
        ),
    ],
)
def test_impossible_figures_of_a_cheese_are_refused(core, name, arguments, words):
    with pytest.raises(ValueError, match=words):
        core("formulas.curd.identity", name, *arguments)


def test_a_fat_below_the_whole_table_is_not_assessed(core):
    # Codex Gouda has no row below 30 % fat in the dry matter.
    lean = {"moisture_frac": 0.50, "fat_frac": 0.10, "is_pasteurised": True}
    found = check(core, CODEX_ROWS["gouda"], **lean)
    (line,) = [f for f in found["figures"] if f["key"] == "dry_matter_min_frac"]
    assert (line["limit"], line["verdict"]) == (None, "not_assessed")
