"""Whatever a field of a recipe holds: it is refused by name, or it harms nobody.

Each field of the shipped recipe is put to each of these values in turn. The
everyday run takes a sample, the long profile all of them.
"""

import json

import pytest

from tests.conftest import ROOT, Phone, beside_core
from tests.core import builders
from tests.core.builders import at

SHIPPED = ROOT / "server" / "recipes" / "washed-wheel.json"
GONE = "(left out)"
WRONG = (None, 0, -1, False, True, "", [], {}, "word", 1e300, [None], [0], GONE)
# How many to go on; without a factor in common with the values, so each is tried.
SAMPLE = {"server": 41, "phone": 97}
LONG_SAMPLE = {"server": 1, "phone": 7}

ASKED = '''
import json

from . import desk
from .alarm import alarms, calendar
from .figures import step_sums
from .make import opening
from .recipe import recipe

KEPT = {}
GONE = "(left out)"


def keep(events):
    KEPT["text"] = json.dumps(events)


def put(path, value, now_ms):
    """Put a value into the recipe; return what is told of it, having asked all."""
    events = json.loads(KEPT["text"])
    found = {"recipe": events[0]["data"]["recipe"]}
    place = found
    for name in ["recipe"] + path[:-1]:
        place = place[name]
    if value == GONE:
        place.pop(path[-1])
    else:
        place[path[-1]] = value
    told = recipe.check_recipe(found["recipe"])
    if not told:
        _ask_all(events, found["recipe"], now_ms)
    return told


def _ask_all(events, made, now_ms):
    kept = desk.new()
    make_id = events[0]["make"]
    middle = len(events) // 2
    for some, at_ms in ((events[:1], events[0]["at_ms"]),
                        (events[1:middle], events[middle]["at_ms"]),
                        (events[middle:], now_ms)):
        assert desk.take(kept, some)["problems"] == []
        assert desk.view(kept, make_id, at_ms) is not None
        desk.board(kept, at_ms)
        alarms.alarms(kept, at_ms, 600.0)
        calendar.calendar(desk.view(kept, make_id, at_ms), None)
    for step in made["steps"]:
        desk.step(kept, make_id, step["key"], now_ms)
    for step in made["steps"][::8]:
        step_sums.step_sums(kept, make_id, step["key"], now_ms, None)
    desk.curve(kept, make_id, now_ms)
    desk.record(kept, make_id)
    desk.tanks(kept, now_ms)
    desk.trends(kept, made["id"])
    desk.clashes_if(kept, made, "raw", now_ms, now_ms)
    opening.suggestion(made, 500.0)
'''


RECIPE = json.loads(SHIPPED.read_text("utf-8"))


def a_day(recipe):
    """Return the events of a make that begins and ends each step of a recipe."""
    phone = builders.Phone()
    events = [phone.opened(recipe=recipe, moulds=[{"size": "small", "count": 30}])]
    for place, step in enumerate(recipe["steps"]):
        minute = 1 + 10 * place
        events.append(phone.event("step_begun", minute, step=step["key"]))
        for row in step.get("readings", []):
            value = "negative" if row["quantity"].endswith("_test") else 0.05
            events.append(phone.reading(row["quantity"], value, minute, step["key"]))
        if place < len(recipe["steps"]) - 2:
            events.append(phone.event("step_ended", minute + 9, step=step["key"]))
    return events


def fields(value, path=(), shape=()):
    """Return {what kind of place it is: where one of them is} of a JSON value."""
    found = {}
    rows = []
    if isinstance(value, dict):
        free = shape in (("sources",), ("figures",))
        rows = [(name, "*" if free else name) for name in value]
    elif isinstance(value, list):
        rows = [(place, "[]") for place in range(len(value))]
    for name, kind in rows:
        here, of = (*path, name), (*shape, kind)
        found.setdefault(of, here)
        for inner, where in fields(value[name], here, of).items():
            found.setdefault(inner, where)
    return found


CASES = [(list(path), value) for path in fields(RECIPE).values() for value in WRONG]


@pytest.fixture(scope="module", params=["server", "phone"])
def put(request, tmp_path_factory):
    """Put a value into the shipped recipe and ask all, on either interpreter."""
    folder = tmp_path_factory.mktemp("sown")
    (folder / "core").mkdir()
    file = folder / "core" / "sown.py"
    file.write_text(ASKED, encoding="utf-8")
    if request.param == "server":
        call, close = beside_core("sown", file)
    else:
        call = Phone(folder)
        close = call.close
    call("sown", "keep", a_day(RECIPE))
    yield request.param, lambda path, value: call("sown", "put", path, value, at(2000))
    close()


def kind_of(value):
    return float if type(value) is int else type(value)


def before(path):
    value = RECIPE
    for name in path:
        value = value[name]
    return value


def check(put, path, value):
    told = put(path, value)
    assert all(row["field"] and row["key"] for row in told), (path, value, told)
    was = before(path)
    if was is None or value in (None, GONE):
        return  # what is left out may be filled, and the other way round
    if path[-2:] == ["by", "value"] and isinstance(value, str):
        return  # a figure is answered by one value of a sum, or by one of several
    if kind_of(value) != kind_of(was):
        # Told of the field itself, by its name or the list it stands in.
        name = [str(part) for part in path if isinstance(part, str)][-1]
        assert any(name in row["field"].split(".") for row in told), (path, value)


def test_a_field_of_a_wrong_kind_is_refused_by_name_or_harms_nobody(put):
    where, ask = put
    for path, value in CASES[:: SAMPLE[where]]:
        check(ask, path, value)


@pytest.mark.long
def test_no_field_of_the_shipped_recipe_can_break_an_answer(put):
    where, ask = put
    # The same code runs on both; the phone's interpreter takes twenty times as long.
    for path, value in CASES[:: LONG_SAMPLE[where]]:
        check(ask, path, value)


@pytest.mark.parametrize("name", ["readings", "targets", "drift", "adds", "sums"])
@pytest.mark.parametrize("value", [None, 0, -1, False])
def test_a_list_that_is_none_is_refused_with_its_path(core, name, value):
    recipe = json.loads(json.dumps(RECIPE))
    recipe["steps"][0][name] = value
    key = recipe["steps"][0]["key"]
    told = core("recipe.recipe", "check_recipe", recipe)
    assert {"field": f"steps.{key}.{name}", "key": "not_a_list", "limit": None} in told


@pytest.mark.parametrize(
    ("path", "most"), [(("steps", 0, "do"), 60), (("steps", 0, "after"), 120)]
)
def test_a_list_longer_than_any_recipe_needs_is_refused(core, path, most):
    recipe = json.loads(json.dumps(RECIPE))
    step = recipe["steps"][0]
    step[path[2]] = [{"en": "Do."} if path[2] == "do" else "receive"] * (most + 1)
    told = core("recipe.recipe", "check_recipe", recipe)
    field = f"steps.{step['key']}.{path[2]}"
    assert {"field": field, "key": "too_many", "limit": most} in told


def test_a_text_longer_than_anybody_reads_is_refused(core):
    recipe = json.loads(json.dumps(RECIPE))
    recipe["title"]["fr"] = "é" * 4001
    told = core("recipe.recipe", "check_recipe", recipe)
    assert told == [{"field": "title.fr", "key": "too_long", "limit": 4000}]
