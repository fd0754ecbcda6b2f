"""Every sum is found by its key, and only what is asked for is loaded."""

import subprocess
import sys

import pytest

from server.core.recipe.sum_keys import SUM_KEYS, SUM_TOPICS
from server.core.sums import catalogue
from tests.conftest import ROOT


@pytest.mark.parametrize("key", SUM_KEYS)
def test_a_key_finds_its_own_sum(key):
    assert catalogue.find(key)["key"] == key


def test_every_topic_has_its_keys_in_order():
    for topic, keys in SUM_TOPICS:
        assert [row["key"] for row in catalogue.ROWS_OF[topic]()] == list(keys)


def test_no_key_stands_twice():
    assert len(set(SUM_KEYS)) == len(SUM_KEYS)


OF_ONE_WHEEL = {"diameter_m", "height_m", "start_kg", "now_kg"}


@pytest.mark.parametrize("key", SUM_KEYS)
def test_a_sum_that_asks_for_one_wheel_is_asked_by_size(key):
    row = catalogue.find(key)
    asks = {item["name"] for item in row["inputs"]}
    assert row["by_size"] or not asks & OF_ONE_WHEEL


def loaded_by(key):
    code = (
        "import sys; from server.core.sums import catalogue; "
        f"catalogue.find({key!r}); "
        "print(*sorted(m for m in sys.modules if m.startswith('server.core.')))"
    )
    done = subprocess.run(
        [sys.executable, "-c", code],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=True,
    )
    names = [name.split(".")[2:] for name in done.stdout.split()]
    return {".".join(name) for name in names}


def test_one_sum_loads_no_other_topic():
    loaded = {name.rsplit(".", 1)[-1] for name in loaded_by("humidity")}
    assert "store" in loaded
    modules = {topic for topic, _ in SUM_TOPICS} - {"yield"} | {"yields"}
    assert not loaded & modules - {"store"}


@pytest.mark.parametrize(
    ("key", "module", "others"),
    [
        ("heat_time", "sums.heat.heat", {"sums.heat.heat_forecast", "numbers.lines"}),
        ("cut_time", "sums.milk.cut", {"sums.milk.rennet", "numbers.lines"}),
        ("starter_packs", "sums.milk.ingredients", {"sums.milk.milk"}),
        ("wash_water", "sums.curd.wash_water", {"sums.curd.wash", "sums.milk.milk"}),
        (
            "brine_time",
            "sums.salt.brine_time",
            {"sums.salt.brine", "sums.salt.brine_tank"},
        ),
    ],
)
def test_what_a_first_view_asks_comes_without_its_topic(key, module, others):
    loaded = loaded_by(key)
    assert module in loaded
    assert not loaded & others


def test_the_topics_load_no_sum_and_name_every_one(core):
    topics = core("desk", "sums_topics", {})
    assert [(one["key"], tuple(one["sums"])) for one in topics] == list(SUM_TOPICS)


def test_the_list_of_topics_loads_no_module_of_the_sums():
    code = (
        "import sys; from server.core import desk; "
        "desk.sums_topics(desk.new()); "
        "print(*(m for m in sys.modules if m.startswith('server.core.sums')))"
    )
    done = subprocess.run(
        [sys.executable, "-c", code],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=True,
    )
    assert done.stdout.strip() == ""


def test_a_topic_is_laid_out_alone_as_it_stands_in_the_whole_catalogue(core):
    whole = core("desk", "sums_catalogue", {})
    parts = [core("desk", "sums_catalogue", {}, topic) for topic, _ in SUM_TOPICS]
    assert [row for part in parts for row in part] == whole
    for (topic, keys), part in zip(SUM_TOPICS, parts, strict=True):
        assert [row["key"] for row in part] == list(keys)
        assert {row["topic"] for row in part} == {topic}


def test_a_topic_that_is_none_is_refused_by_name():
    with pytest.raises(ValueError, match="'whey' is none of the sums'"):
        catalogue.layout("whey")


def test_a_table_of_readings_says_that_its_time_rises():
    for row in catalogue.rows():
        for item in row["inputs"]:
            names = [c["name"] for c in item["columns"] or [] if c["rises"]]
            assert names == [n for n in names if n == "at_min"]
    readings = catalogue.find("acid_band")["inputs"][0]
    assert [column["rises"] for column in readings["columns"]] == [True, False]


def test_an_input_is_typed_in_its_usual_unit_first():
    inputs = {item["name"]: item for item in catalogue.find("brine_time")["inputs"]}
    # Days in the brine, not minutes; a wheel is measured in millimetres.
    assert inputs["brined_s"]["units"][0] == "d"
    assert inputs["diameter_m"]["units"][0] == "mm"
    assert not inputs["diffusion_m2_s"]["by_hand"]
