"""Whether a make's wheels are out of the press, and the step that they ripen in."""

from tests.core.builders import Phone, at, step


def a_cheese(phone, last=4):
    """Return the opening of a make with a press, a brine and two steps of the store."""
    opened = phone.opened()
    recipe = opened["data"]["recipe"]
    steps = [
        step("press", place="press"),
        step("brine", ["press"], place="brine"),
        step("dry", ["brine"], place="store"),
        step("ripen", ["dry"], place="store"),
    ]
    opened["data"]["recipe"] = {**recipe, "ingredients": [], "steps": steps[:last]}
    return opened


def store_step(ask, events, at_min=90):
    told, view, board = ask.desk(
        ("take", events), ("view", events[0]["make"], at(at_min)), ("board", at(at_min))
    )
    assert told["problems"] == []
    (make,) = board["makes"]
    assert make["store_step"] == view["make"]["store_step"]
    return make["store_step"]


def test_a_make_in_the_press_is_not_in_the_store(ask):
    phone = Phone()
    events = [a_cheese(phone), phone.event("step_begun", 1, step="press")]
    assert store_step(ask, events) is None


def test_wheels_out_of_the_press_ripen_in_the_last_step_of_the_store(ask):
    phone = Phone()
    events = [
        a_cheese(phone),
        phone.event("step_begun", 1, step="press"),
        phone.event("step_ended", 60, step="press"),
    ]
    assert store_step(ask, events) == "ripen"


def test_a_brine_that_is_skipped_early_brings_no_wheel_out_of_the_press(ask):
    phone = Phone()
    events = [
        a_cheese(phone),
        phone.event("step_begun", 1, step="press"),
        phone.event("step_skipped", 2, step="brine", why="dry salted"),
    ]
    assert store_step(ask, events) is None


def test_a_make_that_is_closed_stays_there_and_one_abandoned_does_not(ask):
    phone = Phone()
    opened = a_cheese(phone)
    assert store_step(ask, [opened, phone.event("make_closed", 5)]) == "ripen"
    given_up = phone.event("make_abandoned", 6, why="power failed")
    assert store_step(ask, [opened, given_up]) is None


def test_a_recipe_without_a_store_has_no_such_step(ask):
    phone = Phone()
    events = [a_cheese(phone, last=2), phone.event("make_closed", 5)]
    assert store_step(ask, events) is None


def test_practice_is_in_no_store_of_the_creamery(ask):
    phone = Phone()
    opened = a_cheese(phone)
    opened["data"]["practice"] = True
    events = [opened, phone.event("make_closed", 5)]
    _, board = ask.desk(("take", events), ("board", at(6)))
    assert board["makes"][0]["store_step"] is None


def test_wheels_can_be_turned_where_they_stand_and_not_in_the_vat(ask):
    phone = Phone()
    opened = a_cheese(phone)
    assert ask.step([opened], "press", 1)["can_turn"] is True
    assert ask.step([opened], "ripen", 1)["can_turn"] is True
    assert ask.step([Phone().opened()], "heat", 1)["can_turn"] is False


def can_brine(ask, *events):
    _, board = ask.desk(("take", list(events)), ("board", at(6)))
    return board["makes"][0]["can_brine"]


def test_wheels_of_a_make_go_into_brine_unless_it_is_practice_or_given_up(ask):
    phone = Phone()
    opened = a_cheese(phone)
    assert can_brine(ask, opened) is True
    assert can_brine(ask, opened, phone.event("make_closed", 5)) is True
    given_up = phone.event("make_abandoned", 5, why="milk_bad")
    assert can_brine(ask, opened, given_up) is False
    practice = {**opened, "data": {**opened["data"], "practice": True}}
    assert can_brine(ask, practice) is False


def test_makes_that_ripen_are_listed_the_newest_first(ask):
    events = []
    makes = [f"0193a5b0-0000-7000-8000-00000000010{number}" for number in range(4)]
    # The last is for practice, the third is not closed and still in its press.
    for number, make in enumerate(makes):
        phone = Phone(make=make)
        opened = a_cheese(phone)
        opened["data"]["practice"] = number == 3
        opened["at_ms"] = opened["entered_ms"] = at([30, 10, 20, 40][number])
        events.append(opened)
        if number != 2:
            events.append(phone.event("make_closed", 60))
    told = ask.desk(("take", events), ("board", at(90)))[1]
    assert told["ripening"] == [makes[0], makes[1]]


def before_store(ask, events, at_min=90):
    view = ask.view(events, at_min)
    return view["make"]["before_store"], view["steps"]


def test_wheels_that_dry_are_told_to_dry_and_when_they_are_to_ripen(ask):
    # Seen: while wheels dried their days in the store were told as not shown.
    phone = Phone()
    events = [a_cheese(phone), phone.event("step_begun", 1, step="press")]
    assert before_store(ask, events)[0] is None
    events.append(phone.event("step_ended", 60, step="press"))
    told, steps = before_store(ask, events)
    (begins_ms,) = [one["expected_begin_ms"] for one in steps if one["key"] == "ripen"]
    assert told == {"step": "brine", "begins_ms": begins_ms}
    assert begins_ms >= at(90)
    for kind, name in (("begun", "brine"), ("ended", "brine"), ("begun", "dry")):
        minute = 70 + len(events)
        events.append(phone.event("step_" + kind, minute, step=name))
    assert before_store(ask, events)[0]["step"] == "dry"
    events.append(phone.event("step_ended", 80, step="dry"))
    assert before_store(ask, events)[0] is None  # they may ripen
    events.append(phone.event("step_begun", 85, step="ripen"))
    assert before_store(ask, events)[0] is None
