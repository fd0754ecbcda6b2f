"""Who has a step in hand, and since when nobody should believe it."""

from tests.core.builders import Phone, at


def task(ask, *events, at_min=30):
    return ask.step([Phone(1).opened(), *events], "receive", at_min)["task"]


def two_phones():
    ida, bo = Phone(), Phone(1, person="bo")
    bo.seq = 50
    return ida, bo


def hands(found):
    rows = [] if found is None else [found, *found["others"]]
    return [(row["by"], row["at_ms"]) for row in rows]


def test_a_step_is_in_nobody_s_hand_until_it_is_taken(ask):
    assert task(ask) is None
    taken = Phone().event("task_taken", 5, step="receive")
    assert task(ask, taken) == {
        "id": taken["id"],
        "by": "ida",
        "at_ms": at(5),
        "from": None,
        "stale": None,
        "stale_ms": at(65),
        "others": [],
    }


def test_two_who_take_the_same_step_unknown_to_each_other_both_have_it(ask):
    ida, bo = two_phones()
    first = ida.event("task_taken", 5, step="receive")
    second = bo.event("task_taken", 6, step="receive")
    for events in ((first, second), (second, first)):
        assert hands(task(ask, *events)) == [("ida", at(5)), ("bo", at(6))]


def test_who_takes_over_has_it_alone_and_says_from_whom(ask):
    ida, bo = two_phones()
    first = ida.event("task_taken", 5, step="receive")
    over = bo.event("task_taken", 6, ref=first["id"], step="receive")
    for events in ((first, over), (over, first)):
        found = task(ask, *events)
        assert hands(found) == [("bo", at(6))]
        assert found["from"] == {"by": "ida", "at_ms": at(5)}


def test_what_is_let_go_is_free_and_only_one_s_own_is_let_go(ask):
    ida, bo = two_phones()
    first = ida.event("task_taken", 5, step="receive")
    second = bo.event("task_taken", 6, step="receive")
    gone = bo.event("task_released", 7, step="receive")
    assert hands(task(ask, first, second, gone)) == [("ida", at(5))]
    # A maker may let go what somebody forgot, by naming it.
    freed = bo.event("task_released", 8, ref=first["id"], step="receive")
    assert task(ask, first, second, gone, freed) is None


def test_who_takes_it_twice_has_it_once(ask):
    ida, _ = two_phones()
    twice = [ida.event("task_taken", minute, step="receive") for minute in (5, 9)]
    assert hands(task(ask, *twice)) == [("ida", at(9))]


def test_taken_and_let_go_in_one_instant_is_let_go(ask):
    # Seen: with equal instants the step stayed in hand.
    phone = Phone()
    taken = phone.event("task_taken", 5, step="receive")
    released = phone.event("task_released", 5, step="receive")
    assert task(ask, taken, released) is None
    assert task(ask, released, taken) is None


def test_a_step_that_nobody_begins_within_the_hour_looks_forgotten(ask):
    taken = Phone().event("task_taken", 5, step="receive")
    assert task(ask, taken, at_min=64.9)["stale"] is None
    assert task(ask, taken, at_min=65)["stale"] == "idle"


def test_nobody_has_a_step_in_hand_for_longer_than_a_shift(ask):
    phone = Phone()
    taken = phone.event("task_taken", 5, step="receive")
    begun = phone.event("step_begun", 6, step="receive")
    # Eight hours are 480 minutes.
    assert task(ask, taken, begun, at_min=484.9)["stale"] is None
    found = task(ask, taken, begun, at_min=485)
    assert (found["stale"], found["stale_ms"]) == ("shift", at(485))


def test_what_is_over_is_in_nobody_s_hand(ask):
    phone = Phone()
    taken = phone.event("task_taken", 5, step="receive")
    ended = phone.event("step_ended", 9, step="receive")
    assert task(ask, taken, ended) is None


def test_the_view_changes_when_a_task_becomes_stale(ask):
    # A quiet step of ten hours: nothing else changes between.
    from tests.core.builders import figure
    from tests.core.step.test_steps import one_step

    phone = Phone()
    lasts = figure(36000, "s")
    events = one_step(phone, lasts=lasts, end={"by": "time"})
    events.append(phone.event("task_taken", 5, step="work"))
    assert ask.view(events, 10)["next_change_ms"] == at(485)


def test_the_board_says_who_has_what(ask):
    phone = Phone()
    taken = phone.event("task_taken", 5, step="receive")
    board = ask.desk(("take", [Phone(1).opened(), taken]), ("board", at(6)))[1]
    (row,) = board["due"]
    assert row["task"]["by"] == "ida"
    (make,) = board["makes"]
    assert make["focus"]["task"]["by"] == "ida"
