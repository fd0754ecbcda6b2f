"""What is due together is one round; what may be shown to be tapped."""

import copy

from tests.core.builders import Phone, figure, step
from tests.core.step.parts.test_sized import Press
from tests.core.step.test_steps import one_step, with_steps

BEGIN = {"when": "begin", "required": True}


def due(shown):
    return [(pad["quantity"], pad["size"]) for pad in shown["pads"] if pad["is_due"]]


def offers(shown, quantity):
    (pad,) = [pad for pad in shown["pads"] if pad["quantity"] == quantity]
    return [(offer["why"], offer["value"]) for offer in pad["offers"]]


def during(quantity, every_s):
    wanted = {"quantity": quantity, "when": "during", "required": True}
    return {**wanted, "every_s": every_s}


def target(quantity, value, **more):
    said = figure(value, "pH", value - 0.1, value + 0.1)
    return {"quantity": quantity, "figure": {**said, **more}}


def test_what_the_begin_wants_is_one_round_in_the_recipe_s_order(ask):
    rows = [{"quantity": "ph", **BEGIN}, {"quantity": "milk_temp_c", **BEGIN}]
    rows.append({"quantity": "whey_drained_l", "when": "end", "required": True})
    phone = Phone()
    events = one_step(phone, readings=rows)
    shown = ask.step(events, "work", 0)
    assert due(shown) == [("ph", None), ("milk_temp_c", None)]
    events.append(phone.reading("ph", 6.5, 1, "work"))
    assert due(ask.step(events, "work", 1)) == [("milk_temp_c", None)]


def test_what_falls_due_within_a_tenth_of_its_interval_goes_along(ask):
    rows = [during("store_temp_c", 3600.0), during("store_humidity_frac", 3600.0)]
    phone = Phone()
    events = one_step(phone, readings=rows)
    events.append(phone.reading("store_temp_c", 12.5, 1, "work"))
    events.append(phone.reading("store_humidity_frac", 0.86, 4, "work"))
    # Due at 61 and 64 min; a tenth of an hour is 6 min.
    assert due(ask.step(events, "work", 54.9)) == []
    assert due(ask.step(events, "work", 55)) == [("store_temp_c", None)]
    both = [("store_temp_c", None), ("store_humidity_frac", None)]
    assert due(ask.step(events, "work", 58)) == both


def test_each_size_that_lacks_a_reading_is_in_the_round(ask):
    press = Press()
    shown, _ = press.shown(ask, 2)
    gauge = "press_gauge_kpa"
    assert due(shown) == [(gauge, "small"), (gauge, "large")]
    press.read(25.0, 3, "small")
    shown, _ = press.shown(ask, 3)
    assert due(shown) == [(gauge, "large")]


def test_the_last_value_is_shown_and_what_is_wanted(ask):
    rows = [{"quantity": "ph", **BEGIN}]
    phone = Phone()
    events = one_step(phone, readings=rows, targets=[target("ph", 6.6)])
    assert offers(ask.step(events, "work", 0), "ph") == [("wanted", 6.6)]
    events.append(phone.reading("ph", 6.5, 1, "work"))
    shown = ask.step(events, "work", 2)
    assert offers(shown, "ph") == [("last", 6.5), ("wanted", 6.6)]


def test_a_rule_s_limit_is_not_shown_to_be_tapped(ask):
    rows = [{"quantity": "ph", **BEGIN}]
    ruled = [target("ph", 6.6, range_of="rule")]
    events = one_step(Phone(), readings=rows, targets=ruled)
    assert offers(ask.step(events, "work", 0), "ph") == []


def test_a_choice_is_never_shown_to_be_tapped(ask):
    rows = [{"quantity": "drug_test", **BEGIN}]
    phone = Phone()
    events = one_step(phone, readings=copy.deepcopy(rows))
    events.append(phone.reading("drug_test", "negative", 1, "work"))
    assert offers(ask.step(events, "work", 2), "drug_test") == []


def test_as_many_wheels_are_turned_as_were_moulded(ask):
    phone = Phone()
    moulds = [{"size": "small", "count": 30}]
    recipe = with_steps(step("work", place="press"))
    events = [phone.opened(recipe=recipe, moulds=moulds)]
    assert ask.step(events, "work", 0)["turn_wheels"] == 0
    filled = {"size": "small", "count": 29}
    events.append(phone.event("wheels_moulded", 1, **filled))
    assert ask.step(events, "work", 2)["turn_wheels"] == 29
