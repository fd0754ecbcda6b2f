"""What a make lacks for a sum is told without the sum, and as the sum would say it."""

import importlib
import itertools
import sys

import pytest

from server.config import CORE_DIR
from server.core.figures.rests import RESTS_ON
from server.core.known.lacking import lacking
from server.core.known.origins import from_make
from server.core.sums.answer import answer
from server.core.sums.catalogue import find
from server.core.sums.needs import NEEDS, WAYS
from tests.core.builders import MAKE, Phone, at
from tests.core.figures.test_figure import HOUSE
from tests.core.sums.asking import RULES

MOULDS = [{"step": "press_1", "diameter_m": 0.3, "side_by_side": 1}]


def likely(item):
    """Return a value that an input can have."""
    if item["kind"] == "series":
        return MOULDS
    low = item["low"] if item["ask_low"] is None else item["ask_low"]
    return low + 0.5 * (item["ask_high"] or item["high"]) if low < 1 else low * 2


def test_each_sum_needs_what_its_row_asks_for_and_has_no_default_for():
    for key, names in NEEDS.items():
        inputs = find(key)["inputs"]
        assert list(names) == [
            item["name"]
            for item in inputs
            if item["default"] is None and not item["optional"]
        ], key


def test_a_way_is_a_choice_of_the_sum_and_the_usual_one_its_default():
    for key, (chooser, usual, ways) in WAYS.items():
        items = {item["name"]: item for item in find(key)["inputs"]}
        assert set(ways) <= set(items[chooser]["choices"])
        default = items[chooser]["default"]
        assert usual == (None if default is None else default["value"])
        assert {name for names in ways.values() for name in names} <= set(items)


def test_every_sum_whose_answers_are_kept_for_figures_says_what_it_needs():
    assert set(RESTS_ON) == set(NEEDS)


@pytest.mark.parametrize("key", sorted(NEEDS))
def test_what_is_lacking_is_what_the_sum_itself_would_call_missing(key):
    row = find(key)
    items = {item["name"]: item for item in row["inputs"]}
    chooser, _, ways = WAYS.get(key, (None, None, {}))
    words = [None, *(items[chooser]["choices"] if chooser else [])]
    names = {*NEEDS[key], *itertools.chain.from_iterable(ways.values())} - {chooser}
    told_of = 0
    for word, count in itertools.product(words, range(len(names) + 1)):
        for some in itertools.combinations(sorted(names), count):
            known = {name: from_make(likely(items[name])) for name in some}
            if word is not None:
                known[chooser] = from_make(word)
            looked = {name: known.get(name) for name in {*items}}
            missing = lacking({"equipment": {}}, key, looked)
            assert missing == answer(row, {}, known, RULES)["missing"], (word, some)
            told_of += bool(missing)
    assert told_of


def test_equipment_that_may_serve_is_left_to_the_sum():
    looked = dict.fromkeys(NEEDS["press_programme"])
    assert lacking({"equipment": {"bore_m": 0.08}}, "press_programme", looked) == []


def test_a_way_that_equipment_chooses_needs_its_own():
    looked = {"vat_temp_c": from_make(31.0), "target_temp_c": from_make(38.0)}
    looked.update(heating=None, contents_kg=from_make(600.0), power_kw=None)
    missing = lacking({"equipment": {"heating": "power"}}, "heat_time", looked)
    assert missing == ["power_kw"]


@pytest.fixture
def fresh(tmp_path, monkeypatch):
    """Give the core as if nothing of it had been loaded."""
    (tmp_path / "core").symlink_to(CORE_DIR)
    monkeypatch.syspath_prepend(tmp_path)
    yield importlib.import_module
    for name in [one for one in sys.modules if one.split(".")[0] == "core"]:
        del sys.modules[name]


def test_a_sum_that_lacks_something_is_not_loaded_for_a_view(fresh):
    desk = fresh("core.desk")
    mine, phone = desk.new(), Phone()
    desk.set_rules(mine, RULES)
    desk.take(mine, [phone.opened(recipe=HOUSE, milk_l=600.0)])
    view = desk.view(mine, MAKE, at(1))
    steps = {row["key"]: row for row in view["steps"]}
    assert {"heat", "set"} <= set(steps)
    loaded = {name for name in sys.modules if name.startswith("core.")}
    assert not {"core.sums.heat.heat", "core.sums.milk.rennet"} & loaded
    assert not {"core.formulas.heat.heat", "core.formulas.milk.cutting"} & loaded
