"""When to open a make: what it would clash with, and a start that clashes less."""

from tests.core.builders import MAKE, at
from tests.core.creamery.test_clashes import OTHER, THIRD, of_steps, press, pressing


def if_opened(ask, events, planned, start_min, now_min):
    return ask.desk(
        ("take", events), ("clashes_if", planned, "raw", at(start_min), at(now_min))
    )[1]


def test_a_new_make_is_told_what_it_would_clash_with(ask):
    planned = of_steps(*press(30, 30, 30))
    events = pressing(MAKE, 0, 120, 120, 120, "North")
    # Opened at 92 it is turned at 122, two minutes from the other.
    found = if_opened(ask, events, planned, 92, 1)
    assert found["count"] == 1
    (one,) = found["clashes"]
    assert [(row["make"], row["at_ms"]) for row in one["acts"]] == [
        (MAKE, at(120)),
        ("", at(122)),
    ]
    # Five minutes later it is turned at 127: seven minutes apart.
    assert found["better"] == {"start_ms": at(97), "count": 0}


def test_a_new_make_may_be_opened_earlier_but_not_before_now(ask):
    planned = of_steps(*press(30, 30, 30))
    # Three makes fill the time after the one that clashes.
    events = pressing(MAKE, 0, 120, 120, 120)
    for make, minutes in ((OTHER, 127), (THIRD, 134)):
        events += pressing(make, 0, minutes, minutes, minutes)
    # At 120, 127 and 134 there is a turn; 122 lies near two of them.
    found = if_opened(ask, events, planned, 92, 1)
    # 87 would turn at 117, still 3 from 120; 82 turns at 112, free.
    assert found["better"] == {"start_ms": at(82), "count": 0}
    found = if_opened(ask, events, planned, 92, 92)
    # Later only: 137 is 3 from 134; 142 is free, 20 minutes on.
    assert found["better"] == {"start_ms": at(112), "count": 0}


def test_a_new_make_alone_clashes_with_nothing(ask):
    planned = of_steps(*press(30, 30, 30))
    assert if_opened(ask, [], planned, 0, 0) == {
        "clashes": [],
        "count": 0,
        "better": None,
    }
    # What the running makes have among themselves is not the new one's matter.
    events = pressing(MAKE, 0, 30, 25, 35) + pressing(OTHER, 0, 30, 25, 35)
    assert if_opened(ask, events, planned, 90, 5)["count"] == 0
