"""What to do now is the first sentence of the recipe whose figures can be told."""

import pytest

from tests.core.builders import Phone, recipe

RENNET = [{"en": "Pour {dose/rennet} in."}, {"en": "Let the milk stand."}]
DOSE = {"ingredient": "rennet", "amount": 103.0, "unit": "mL", "step": "rennet"}


def told(ask, key, now=None, added=False):
    """Return what a step that runs says to do now."""
    made = recipe()
    for row in made["steps"]:
        if row["key"] == key and now:
            row["now"] = now
    phone = Phone()
    events = [phone.opened(recipe=made), phone.event("step_begun", 1, step=key)]
    if added:
        events.append(phone.event("ingredient_added", 2, **DOSE))
    return ask.step(events, key, 3)["now"]


def test_a_dose_is_told_until_it_is_in(ask):
    now = told(ask, "rennet", RENNET)
    assert now["text"] == RENNET[0]
    (figure,) = now["figures"]
    assert (figure["name"], figure["unit"]) == ("dose/rennet", "mL")
    # 500 L x 0.2 mL/kg of milk of 1.028 to 1.036 kg/L, cold or warm.
    assert figure["value"] == pytest.approx(103.2, rel=4e-3)
    then = told(ask, "rennet", RENNET, added=True)
    assert then == {"text": RENNET[1], "figures": []}


def test_where_no_sentence_can_be_told_the_first_line_is(ask):
    now = told(ask, "rennet", RENNET[:1], added=True)
    assert now == {"text": {"en": "Do rennet."}, "figures": []}


def test_an_end_and_a_target_fill_their_names(ask):
    now = [{"en": "Heat to {end/at_least}, about {target/milk_temp_c}, in {lasts}."}]
    figures = told(ask, "heat", now)["figures"]
    assert [(row["name"], row["quantity"], row["value"]) for row in figures] == [
        ("end/at_least", "milk_temp_c", 63.0),
        ("target/milk_temp_c", "milk_temp_c", 63.9),
        ("lasts", None, 3600.0),
    ]


def test_a_recipe_without_sentences_is_told_by_its_first_line(ask):
    assert told(ask, "fans") == {"text": {"en": "Do fans."}, "figures": []}
