"""When a step is due: from its begin or from the rennet, by its figure."""

import pytest

from tests.core.builders import MAKE, MIN, Phone, at, figure, recipe

NOT_DUE = {"due_ms": None, "low_ms": None, "high_ms": None, "basis": None}


@pytest.mark.parametrize(
    ("low", "high", "band"),
    [
        (1500, 2400, (at(25), at(40))),
        (None, None, (at(30), at(30))),  # without a band the value is both ends
        (0, None, (at(0), at(30))),
    ],
)
def test_a_step_is_due_after_its_duration(core, low, high, band):
    lasts = figure(1800, "s", low, high)
    assert core("figures.due", "due_of", at(0), lasts, "lasts") == {
        "due_ms": at(30),
        "low_ms": band[0],
        "high_ms": band[1],
        "basis": "lasts",
    }


def test_what_has_not_begun_or_has_no_duration_has_no_deadline(core):
    lasts = figure(1800, "s")
    assert core("figures.due", "due_of", None, lasts, "lasts") == NOT_DUE
    assert core("figures.due", "due_of", at(0), None, "lasts") == NOT_DUE


def setting(phone, *looks, **rest):
    events = [
        phone.opened(**rest),
        phone.event("step_begun", 100, step="rennet"),
        phone.event("step_begun", 102, step="set"),
    ]
    for at_min, judgement in looks:
        events.append(
            phone.event("curd_judged", at_min, judgement=judgement, step="set")
        )
    return events


def floc(ask, events, now_min=115):
    return ask.desk(("take", events), ("step", MAKE, "set", at(now_min)))[1]["floc"]


def test_the_cut_is_due_at_a_multiple_of_the_floc_time(ask):
    events = setting(Phone(), (108, "not_flocculated"), (110, "flocculated"))
    # 10 min to flocculation: cut at 3 x 10 = 30 min after the rennet, no later than
    # 3.5 x 10 = 35; no sooner than 2.5 x 8 = 20, for it may have flocculated right
    # after the look at 8 min.
    found = floc(ask, events)
    told = [found[name] for name in ("low_ms", "cut_ms", "high_ms")]
    assert told == [at(120), at(130), at(135)]


@pytest.mark.parametrize("floc_ms", [600_001, 723_457, 899_999])
def test_a_whole_multiple_of_the_floc_time_is_exact_to_the_millisecond(ask, floc_ms):
    # Seen: worked out over seconds, three times 600.001 s lost a millisecond.
    events = setting(Phone(), (100 + floc_ms / MIN, "flocculated"))
    events[-1]["at_ms"] = at(100) + floc_ms
    assert floc(ask, events)["cut_ms"] == at(100) + 3 * floc_ms


def test_without_a_band_of_the_factor_the_look_before_is_the_low_end(ask):
    plain = recipe()
    plain["figures"]["floc_factor"] = figure(3.0, "multiple")
    looks = ((109, "not_flocculated"), (110, "flocculated"))
    found = floc(ask, setting(Phone(), *looks, recipe=plain))
    # 3 x 9 = 27 min after the rennet.
    assert (found["low_ms"], found["cut_ms"], found["high_ms"]) == (
        at(127),
        at(130),
        at(130),
    )


def test_a_corrected_rennet_instant_moves_the_cut(ask):
    phone = Phone()
    events = setting(phone, (112, "flocculated"))
    mend = phone.event(
        "entry_corrected",
        115,
        ref=events[1]["id"],
        set={"at_ms": at(102)},
        why="Later.",
    )
    # 10 min from 102: cut at 102 + 30.
    assert floc(ask, [*events, mend])["cut_ms"] == at(132)


def test_before_flocculation_the_setting_is_due_by_its_own_time(ask):
    (told,) = ask.figures(setting(Phone()), 105, ("set", "lasts"))
    assert (told["value"], told["from"], told["fell_back"]) == (
        1800,
        "recipe",
        "missing",
    )
    assert told["needs"] == ["floc_s"]
    found = ask.desk(("take", setting(Phone())), ("step", MAKE, "set", at(105)))[1]
    assert (found["due_ms"], found["due_basis"]) == (at(132), "lasts")


@pytest.mark.parametrize("floc_min", [5, 26])
def test_a_doubtful_floc_point_still_tells_when_to_cut(ask, floc_min):
    # The alert beside it says that the point is doubtful; a make goes on.
    events = setting(Phone(), (100 + floc_min, "flocculated"))
    found = floc(ask, events, 127)
    assert found["cut_ms"] == at(100 + 3 * floc_min)
    assert found["problem"] is not None
