"""What the check says of each thing that can be wrong in a body."""

import pytest

from server.core.recipe.steps.judgements import JUDGEMENTS
from tests.core.builders import MAKE, Phone, recipe
from tests.core.log.kinds.checking import body, problem, refused

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
            problem("judgement", "not_a_choice", list(JUDGEMENTS)),
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
        (body("cautions_seen", cautions="lifting"), problem("cautions", "not_a_list")),
        (body("cautions_seen", cautions=[]), problem("cautions", "missing")),
        (body("cautions_seen", cautions=[7]), problem("cautions", "not_text")),
        (
            body("cautions_seen", cautions=["x" * 122]),
            problem("cautions", "too_long", 121),
        ),
        (
            body("cautions_seen", cautions=["x"] * 41),
            problem("cautions", "too_many", 40),
        ),
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
    found = core("log.kinds.event", "check_event", Phone().opened(**changes))
    assert found[0] == expected


def test_the_recipe_inside_an_opening_is_checked_too(core):
    broken = recipe()
    broken["steps"][0]["place"] = "barn"
    found = core("log.kinds.event", "check_event", Phone().opened(recipe=broken))
    assert found == [problem("steps.receive.place", "unknown_place", "barn")]


def test_equipment_may_be_given(core):
    opened = Phone().opened(equipment={"vat": "jacketed"})
    assert core("log.kinds.event", "check_event", opened) == []
