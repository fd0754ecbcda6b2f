"""The table of events, and what its check says of each thing that can be wrong."""

import copy

import pytest

from server.core.log import events as table
from tests.core.builders import MAKE, START_MS, Phone, a_day, recipe

BIG = 9007199254740991  # the largest whole number that JSON keeps exactly


def problem(field, key, limit=None):
    return {"field": field, "key": key, "limit": limit}


def a_note():
    return Phone().event("note_added", 1, text="Curd looks fine.")


def refused(ask, event, *problems):
    """Assert that an event is refused with these problems and counts for nothing."""
    told, kept = ask.desk(("take", [event]), ("desk",))
    event_id = event.get("id") if isinstance(event, dict) else None
    assert told["problems"] == [{"id": event_id, "why": list(problems)}]
    assert kept["views"] == {}
    # Kept as it came, where its envelope says of which make it is.
    for state in kept["makes"].values():
        assert (state["lists"], state["events"]) == ({}, {})
        assert [raw["event"] for raw in state["raw"].values()] == [event]


def test_every_event_of_a_whole_day_is_sound(core):
    for event in a_day(Phone()):
        assert core("log.events", "check_event", event) == []


@pytest.mark.parametrize(
    ("name", "value", "expected"),
    [
        ("id", "7", problem("id", "not_a_uuid")),
        ("id", None, problem("id", "not_a_uuid")),
        ("make", MAKE.upper(), problem("make", "not_a_uuid")),
        ("device", MAKE.replace("-", "0"), problem("device", "not_a_uuid")),
        ("boot", 5, problem("boot", "not_a_uuid")),
        ("ref", "that one", problem("ref", "not_a_uuid")),
        ("person", "", problem("person", "missing", 64)),
        ("person", "x" * 65, problem("person", "missing", 64)),
        ("person", 7, problem("person", "missing", 64)),
        ("at_ms", 946684799999, problem("at_ms", "below", 946684800000)),
        ("at_ms", 4102444800001, problem("at_ms", "above", 4102444800000)),
        ("at_ms", START_MS + 0.5, problem("at_ms", "not_whole")),
        ("at_ms", True, problem("at_ms", "not_a_number")),
        ("at_ms", "now", problem("at_ms", "not_a_number")),
        ("entered_ms", None, problem("entered_ms", "not_a_number")),
        ("seq", 0, problem("seq", "below", 1)),
        ("seq", BIG + 1, problem("seq", "above", BIG)),
        ("seq", 1.5, problem("seq", "not_whole")),
        ("v", 0, problem("v", "below", 1)),
        ("v", 2, problem("v", "newer_version", 1)),
        ("tz_min", 841, problem("tz_min", "above", 840)),
        ("tz_min", -841, problem("tz_min", "below", -840)),
        ("off_ms", "slow", problem("off_ms", "not_a_number")),
        # A century is 4102444800000 - 946684800000 ms.
        ("off_ms", 3155760000001, problem("off_ms", "above", 3155760000000)),
        ("mono_ms", -1, problem("mono_ms", "below", 0)),
        ("off_q_ms", -1, problem("off_q_ms", "below", 0)),
        ("kind", "moon_seen", problem("kind", "unknown_kind")),
        ("kind", None, problem("kind", "unknown_kind")),
        # A list cannot be looked up in a table; this once raised.
        ("kind", ["note_added"], problem("kind", "unknown_kind")),
        ("data", None, problem("data", "not_a_mapping")),
        ("data", [], problem("data", "not_a_mapping")),
    ],
)
def test_what_is_wrong_in_the_envelope_is_named(ask, name, value, expected):
    refused(ask, {**a_note(), name: value}, expected)


@pytest.mark.parametrize("value", [float("inf"), float("-inf"), float("nan")])
@pytest.mark.parametrize(
    "name", ["at_ms", "entered_ms", "seq", "v", "tz_min", "off_ms", "mono_ms"]
)
def test_a_number_without_end_is_no_number(name, value):
    # A parser makes 1e999 endless, and this once raised. JSON cannot carry it
    # to the phone, so this runs on the server alone.
    found = table.check_event({**a_note(), name: value})
    assert found == [problem(name, "not_a_number")]


@pytest.mark.parametrize("event", [None, 7, "note", [], [[]]])
def test_what_is_no_event_is_refused(ask, event):
    refused(ask, event, problem("event", "not_a_mapping"))


def test_a_whole_number_may_come_with_a_point(core):
    event = {**a_note(), "at_ms": float(START_MS), "seq": 1.0, "v": 1.0}
    assert core("log.events", "check_event", event) == []


def test_version_two_with_a_point_is_newer_too(core):
    found = core("log.events", "check_event", {**a_note(), "v": 2.0})
    assert found == [problem("v", "newer_version", 1)]


def test_a_never_measured_clock_is_sound(core):
    assert core("log.events", "check_event", {**a_note(), "off_q_ms": None}) == []


def body(kind, **data):
    return Phone().event(kind, 1, **data)


READING = {"quantity": "milk_temp_c", "value": 31.5}
RENNET = {"ingredient": "rennet", "amount": 103.0, "unit": "mL"}
DRUG_TESTS = ["negative", "positive"]


@pytest.mark.parametrize(
    ("event", "expected"),
    [
        (body("step_begun"), problem("step", "missing")),
        (body("step_begun", step=""), problem("step", "missing", 1)),
        (body("step_begun", step=7), problem("step", "not_text")),
        (body("step_begun", step="x" * 61), problem("step", "too_long", 60)),
        (body("step_begun", step="heat", why=5), problem("why", "not_text")),
        (body("step_begun", step="a", when=5), problem("when", "unknown_field")),
        (body("step_skipped", step="heat"), problem("why", "missing")),
        (body("step_skipped", step="heat", why="  "), problem("why", "missing", 1)),
        (body("note_added", text="x" * 2001), problem("text", "too_long", 2000)),
        (
            body("reading_taken", quantity="mood", value=5),
            problem("quantity", "unknown", "mood"),
        ),
        # A mapping cannot be looked up in a table; this once raised.
        (
            body("reading_taken", quantity={}, value=5),
            problem("quantity", "unknown", {}),
        ),
        (body("reading_taken", value=5), problem("quantity", "missing")),
        (body("reading_taken", quantity="ph"), problem("value", "missing")),
        (
            body("reading_taken", quantity="ph", value=14.1),
            problem("value", "above", 14.0),
        ),
        (
            body("reading_taken", quantity="ph", value="6.5"),
            problem("value", "not_a_number"),
        ),
        (
            body("reading_taken", quantity="drug_test", value="maybe"),
            problem("value", "not_a_choice", DRUG_TESTS),
        ),
        (
            body("reading_taken", **READING, typed="x" * 25),
            problem("typed", "too_long", 24),
        ),
        (
            body("ingredient_added", **{**RENNET, "amount": -1}),
            problem("amount", "below", 0.0),
        ),
        (
            body("ingredient_added", **{**RENNET, "ingredient": ""}),
            problem("ingredient", "missing", 1),
        ),
        (
            body("ingredient_added", **RENNET, planned=100001),
            problem("planned", "above", 100000.0),
        ),
        (
            body("curd_judged", judgement="nice"),
            problem("judgement", "not_a_choice", list(table.JUDGEMENTS)),
        ),
        (
            body("timer_started", label="Turn", lasts_s=0.5),
            problem("lasts_s", "below", 1.0),
        ),
        (body("timer_stopped"), problem("ref", "missing")),
        (body("wheels_moulded", size="small"), problem("count", "missing")),
        (
            body("wheels_moulded", size="small", count=2.5),
            problem("count", "not_whole"),
        ),
        (body("wheel_turned", count=5001), problem("count", "above", 5000)),
        (body("entry_struck", why="Wrong vat."), problem("ref", "missing")),
        (body("duplicate_judged", same=1), problem("same", "not_yes_or_no")),
        (
            body("alert_acknowledged", alert="x" * 161),
            problem("alert", "too_long", 160),
        ),
    ],
)
def test_what_is_wrong_in_the_body_is_named(ask, event, expected):
    if event["kind"] == "duplicate_judged":
        event["ref"] = MAKE
    refused(ask, event, expected)


@pytest.mark.parametrize(
    ("changes", "expected"),
    [
        ({"milk_l": 0.5}, problem("milk_l", "below", 1.0)),
        ({"moulds": 7}, problem("moulds", "not_a_list")),
        ({"moulds": [7] * 21}, problem("moulds", "too_many", 20)),
        (
            {"moulds": [{"size": "s" * 61, "count": 3}]},
            problem("moulds.size", "too_long", 60),
        ),
        (
            {"equipment": {str(n): 1 for n in range(101)}},
            problem("equipment", "too_many", 100),
        ),
        ({"equipment": {"k" * 61: 1}}, problem("equipment", "too_long", 60)),
        ({"equipment": {"lid": [1]}}, problem("equipment.lid", "not_a_number")),
        (
            {"equipment": {"lid": "w" * 81}},
            problem("equipment.lid", "too_long", 80),
        ),
        (
            {"equipment": {"typed": [1]}},
            problem("equipment.typed", "not_a_mapping"),
        ),
        (
            {"equipment": {"typed": {"lid": "2"}}},
            problem("equipment.typed.lid", "not_a_list"),
        ),
        (
            {"equipment": {"typed": {"lid": ["2", "k" * 81]}}},
            problem("equipment.typed.lid", "too_long", 80),
        ),
        (
            {"equipment": {"typed": {"lid": ["2", 7]}}},
            problem("equipment.typed.lid", "not_text"),
        ),
        (
            {"equipment": {"typed": {str(n): ["2", "kg"] for n in range(101)}}},
            problem("equipment.typed", "too_many", 100),
        ),
        ({"moulds": [7]}, problem("moulds.size", "missing")),
        ({"moulds": [{"count": 3}]}, problem("moulds.size", "missing")),
        (
            {"moulds": [{"size": "small", "count": -1}]},
            problem("moulds.count", "below", 0),
        ),
        ({"moulds": [{"size": "s"}]}, problem("moulds.count", "not_a_number")),
        ({"recipe": {}}, problem("schema", "wrong_schema", 1)),
        ({"recipe": "cheese"}, problem("recipe", "not_a_mapping")),
        ({"equipment": []}, problem("equipment", "not_a_mapping")),
    ],
)
def test_what_is_wrong_in_an_opening_is_named(core, changes, expected):
    found = core("log.events", "check_event", Phone().opened(**changes))
    assert found[0] == expected


def test_the_recipe_inside_an_opening_is_checked_too(core):
    broken = recipe()
    broken["steps"][0]["place"] = "barn"
    found = core("log.events", "check_event", Phone().opened(recipe=broken))
    assert found == [problem("steps.receive.place", "unknown_place", "barn")]


def test_equipment_may_be_given(core):
    opened = Phone().opened(equipment={"vat": "jacketed"})
    assert core("log.events", "check_event", opened) == []


def test_all_that_is_wrong_is_told_at_once(core):
    event = {**a_note(), "seq": 0, "person": "", "data": {"text": "", "colour": "red"}}
    assert core("log.events", "check_event", event) == [
        problem("person", "missing", 64),
        problem("seq", "below", 1),
        problem("text", "missing", 1),
        problem("colour", "unknown_field"),
    ]


def test_a_check_changes_nothing(core):
    event = Phone().opened()
    before = copy.deepcopy(event)
    table.check_event(event)
    assert event == before


@pytest.mark.parametrize(
    ("role", "kind", "allowed"),
    [
        ("viewer", "note_added", False),
        ("helper", "note_added", True),
        ("helper", "step_skipped", False),
        ("maker", "step_skipped", True),
        ("owner", "make_opened", True),
        ("stranger", "note_added", False),
        ("owner", "moon_seen", False),
    ],
)
def test_a_role_may_do_what_the_table_says(core, role, kind, allowed):
    assert core("log.events", "may", role, kind) is allowed


@pytest.mark.parametrize("kind", ["entry_struck", "entry_corrected"])
@pytest.mark.parametrize(
    ("role", "about", "allowed"),
    [
        ("helper", "reading_taken", True),
        ("helper", None, True),  # not known here: its own kind decides
        # Seen: a helper, who may not lift a hold, could strike it out.
        ("helper", "hold_placed", False),
        ("helper", "make_opened", False),
        ("maker", "hold_placed", True),
        ("owner", "moon_seen", False),
    ],
)
def test_changing_an_entry_asks_for_its_role_too(core, kind, role, about, allowed):
    assert core("log.events", "may", role, kind, about) is allowed


def test_a_stop_asks_for_its_own_role_alone(core):
    assert core("log.events", "may", "helper", "timer_stopped", "hold_placed") is True


@pytest.mark.parametrize("kind", sorted(table.KINDS))
def test_nobody_may_do_more_than_who_stands_above(core, kind):
    may = [core("log.events", "may", role, kind) for role in table.ROLES]
    # Once allowed, allowed for every role after it; never for who only looks.
    assert may == sorted(may)
    assert may[0] is False
    assert may[-1] is True


def nested(deep):
    value = 1
    for _ in range(deep):
        value = [value]
    return value


@pytest.mark.parametrize(
    ("data", "expected"),
    [
        ({"set": {"text": "w" * 20000}}, problem("event", "too_large", 16384)),
        ({"set": {"value": "é" * 9000}}, problem("event", "too_large", 16384)),
        ({"set": {"value": nested(25)}}, problem("event", "too_deep", 20)),
        (
            {"set": {str(n): 1 for n in range(21)}},
            problem("set", "too_many", 20),
        ),
        ({"set": {"k" * 61: 1}}, problem("set", "too_long", 60)),
    ],
)
def test_a_correction_has_a_limit_in_every_direction(core, data, expected):
    phone = Phone()
    ref = phone.opened()["id"]
    event = phone.event("entry_corrected", 5, ref=ref, why="mistyped", **data)
    assert core("log.events", "check_event", event) == [expected]


def test_no_kind_takes_more_than_every_phone_can_keep(core):
    for kind in table.KINDS:
        event = Phone().event(kind, 5, junk=["j" * 100] * 4000)
        told = core("log.events", "check_event", event)
        assert told == [problem("event", "too_large", 16384)], kind


def test_what_stands_beside_the_envelope_counts_too(core):
    event = {**Phone().event("note_added", 5, text="ok"), "beside": "b" * 17000}
    told = core("log.events", "check_event", event)
    assert told == [problem("event", "too_large", 16384)]


def test_the_longest_note_in_the_widest_letters_fits(core):
    event = Phone().event("note_added", 5, text="\U0001f9c0" * 2000)
    assert core("log.events", "check_event", event) == []


def test_a_recipe_as_deep_as_nobody_writes_it_is_refused(core):
    deep = {**recipe(), "remarks": nested(25)}
    told = core("log.events", "check_event", Phone().opened(recipe=deep))
    assert told == [problem("recipe", "too_deep", 20)]
