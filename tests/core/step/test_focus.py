from tests.core.builders import Phone, a_day, figure, step, until
from tests.core.step.test_steps import one_step, with_steps


def focus(ask, at_min, events=None):
    return ask.view(
        until(a_day(Phone()), at_min) if events is None else events, at_min
    )["focus"]


def test_the_screen_opens_on_what_wants_a_hand(ask):
    expected = [(0, "receive"), (4, "heat"), (20, "heat"), (60, "heat"), (61, "hold")]
    expected += [
        (91, "fans"),
        (92, "fans"),
        (100, "rennet"),
        (102, "set"),
        (165, "store"),
    ]
    for at_min, key in expected:
        assert focus(ask, at_min) == key


def side_by_side(phone, **rest):
    steps = [
        step("watch", lasts=figure(3600, "s"), end={"by": "time"}),
        step("wash", lasts=figure(600, "s"), end={"by": "time"}),
        step("rest", ["watch"], **rest),
    ]
    return [
        phone.opened(recipe=with_steps(*steps)),
        phone.event("step_begun", 0, step="watch"),
        phone.event("step_begun", 1, step="wash"),
    ]


def test_of_two_running_steps_the_one_that_ends_first_goes_first(ask):
    events = side_by_side(Phone())
    assert focus(ask, 2, events) == "wash"
    assert focus(ask, 11, events) == "wash"
    ended = Phone(1).event("step_ended", 12, step="wash")
    assert focus(ask, 13, [*events, ended]) == "watch"


def test_what_is_ready_goes_before_what_only_runs(ask):
    steps = [step("watch", lasts=figure(3600, "s"), end={"by": "time"}), step("wash")]
    phone = Phone()
    events = [
        phone.opened(recipe=with_steps(*steps)),
        phone.event("step_begun", 0, step="watch"),
    ]
    assert focus(ask, 1, events) == "wash"
    assert focus(ask, 60, events) == "watch"  # it wants a hand, and it runs


def test_a_running_step_goes_before_one_left_open_earlier(ask):
    # Seen: a press ran, and the screen opened on cleaning that nobody had begun.
    steps = [step("clean"), step("press", lasts=figure(3600, "s"), end={"by": "time"})]
    steps.append(step("label"))
    phone = Phone()
    events = [phone.opened(recipe=with_steps(*steps))]
    assert focus(ask, 0, events) == "clean"
    assert ask.view(events, 0)["left_open"] == []
    events.append(phone.event("step_begun", 0, step="press"))
    found = ask.view(events, 1)
    # What comes after the running step wants a hand now; what was passed by does not.
    assert (found["focus"], found["left_open"]) == ("label", ["clean"])
    events.append(phone.event("step_skipped", 2, step="label", why="No labels."))
    found = ask.view(events, 3)
    assert (found["focus"], found["left_open"]) == ("press", ["clean"])
    events.append(phone.event("step_ended", 60, step="press"))
    found = ask.view(events, 61)
    assert (found["focus"], found["left_open"]) == ("clean", [])


def test_a_step_whose_next_reading_is_not_due_leaves_the_hands_free(ask):
    # Seen: while the milk cooled, its screen hid the work that could be done.
    end = {"by": "reading", "quantity": "milk_temp_c", "at_most": figure(32.0, "C")}
    rows = [
        {"quantity": "milk_temp_c", "when": "during", "every_s": 600, "required": True}
    ]
    steps = [step("cool", end=end, readings=rows), step("fit_out")]
    phone = Phone()
    events = [
        phone.opened(recipe=with_steps(*steps)),
        phone.event("step_begun", 0, step="cool"),
    ]
    assert focus(ask, 1, events) == "fit_out"
    assert focus(ask, 10, events) == "cool"  # its reading is due


def test_when_all_is_done_there_is_nothing_to_open_on(ask):
    phone = Phone()
    events = [*one_step(phone), phone.event("step_ended", 5, step="work")]
    assert focus(ask, 6, events) is None
