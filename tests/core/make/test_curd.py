"""From rennet to flocculation to the cut, by hand arithmetic."""

import pytest

from tests.core.builders import Phone, at, figure, recipe

FIGURES = {"floc_factor": figure(3.0, "multiple", 2.5, 3.5)}
STEPS = {row["key"]: row for row in recipe()["steps"]}
SET = STEPS["set"]


def judged(phone, at_min, judgement, step="set"):
    return phone.event("curd_judged", at_min, judgement=judgement, step=step)


def rennet(phone, at_min):
    return phone.event("step_begun", at_min, step="rennet")


def floc(ask, events, figures=FIGURES):
    return ask.one(events, "make.curd", "floc", SET, figures)


def judging(ask, events, begun_min=None, step=SET):
    begun_ms = None if begun_min is None else at(begun_min)
    curd = floc(ask, events) if step["end"]["by"] == "floc" else None
    if curd is not None:
        known = curd["floc_ms"] is not None
        curd["cut_ms"] = (
            curd["added_ms"] + 3 * int(curd["floc_s"] * 1000) if known else None
        )
    lasts_s = step["lasts"]["value"] if step["lasts"] else 0.0
    return ask.one(events, "make.curd", "judging", step, begun_ms, curd, lasts_s)


def test_only_a_step_that_ends_by_flocculation_has_floc_facts(ask):
    assert ask.one([], "make.curd", "floc", STEPS["heat"], FIGURES) is None


def test_before_the_rennet_nothing_is_known(ask):
    found = floc(ask, [])
    assert found["factor"] == 3.0
    assert [name for name in found if found[name] is not None] == ["factor"]


def test_the_clock_of_the_floc_runs_from_the_rennet(ask):
    phone = Phone()
    events = [rennet(phone, 100), judged(phone, 110, "flocculated")]
    assert floc(ask, events) == {
        "added_ms": at(100),
        "floc_ms": at(110),
        "floc_s": 600.0,
        "factor": 3.0,
        "problem": None,
    }


def test_the_first_sure_sign_after_the_rennet_counts(ask):
    phone = Phone()
    events = [
        judged(phone, 99, "flocculated"),  # before the rennet: of another vat
        rennet(phone, 100),
        judged(phone, 108, "not_flocculated"),
        judged(phone, 112, "flocculated"),
        judged(phone, 120, "flocculated"),
    ]
    assert floc(ask, events)["floc_s"] == 720.0
    assert floc(ask, events[::-1])["floc_s"] == 720.0


@pytest.mark.parametrize(
    ("floc_min", "problem"),
    [
        # The setting lasts 25 to 40 min, three times as long: 8:20 to 13:20.
        (5, "floc_too_early"),
        (8.3, "floc_too_early"),
        (8.4, None),
        (13.3, None),
        (13.4, "floc_too_late"),
        (26, "floc_too_late"),
    ],
)
def test_a_floc_time_outside_the_recipes_band_is_told(ask, floc_min, problem):
    phone = Phone()
    events = [rennet(phone, 0), judged(phone, floc_min, "flocculated")]
    assert floc(ask, events)["problem"] == problem


def test_milk_flocculated_half_way_between_two_looks(ask):
    # Seen at 14 min and not yet at 11: at 12.5, within the band; not yet at 13: late.
    phone = Phone()
    seen = [rennet(phone, 0), judged(phone, 14, "flocculated")]
    for look_min, problem in ((11, None), (13, "floc_too_late")):
        look = judged(phone, look_min, "not_flocculated")
        assert floc(ask, [*seen, look])["problem"] == problem


def test_a_corrected_rennet_instant_moves_the_floc_time(ask):
    phone = Phone()
    begun = rennet(phone, 100)
    events = [begun, judged(phone, 112, "flocculated")]
    mend = phone.event(
        "entry_corrected", 115, ref=begun["id"], set={"at_ms": at(102)}, why="Later."
    )
    found = floc(ask, [*events, mend])
    assert (found["added_ms"], found["floc_s"]) == (at(102), 600.0)


def test_a_step_without_judging_asks_for_none(ask):
    assert ask.one([], "make.curd", "judging", STEPS["heat"], at(0), None, 0.0) is None


def test_before_the_step_has_begun_nothing_is_asked(ask):
    assert judging(ask, []) == {
        "choices": ["not_flocculated", "flocculated"],
        "from_ms": None,
        "last": None,
        "met": False,
    }


def test_the_floc_test_is_asked_first_and_alone(ask):
    phone = Phone()
    found = judging(ask, [rennet(phone, 100)], 102)
    assert found["choices"] == ["not_flocculated", "flocculated"]
    # Expected at 1800 s / 3 = 10 min after the rennet; from 0.6 x 10 = 6 min.
    assert found["from_ms"] == at(106)


def test_without_the_rennet_the_share_of_the_step_counts(ask):
    # 0.85 x 30 min = 25.5 min from the step's own begin.
    assert judging(ask, [], 100)["from_ms"] == at(125.5)


def test_nothing_is_asked_before_the_step_itself_begins(ask):
    assert judging(ask, [rennet(Phone(), 100)], 109)["from_ms"] == at(109)


def test_after_flocculation_the_break_is_asked_for(ask):
    phone = Phone()
    events = [rennet(phone, 100), judged(phone, 110, "flocculated")]
    found = judging(ask, events, 102)
    assert found["choices"] == ["soft", "clean_break", "past_it"]
    # 0.85 of the 30 min from rennet to cut.
    assert found["from_ms"] == at(125.5)
    assert found["last"]["judgement"] == "flocculated"
    assert found["met"] is False


def test_a_curd_judged_soft_is_looked_at_again_in_two_minutes(ask):
    phone = Phone()
    events = [
        rennet(phone, 100),
        judged(phone, 110, "flocculated"),
        judged(phone, 128, "soft"),
    ]
    assert judging(ask, events, 102)["from_ms"] == at(130)


@pytest.mark.parametrize(
    ("judgement", "met"), [("soft", False), ("clean_break", True), ("past_it", True)]
)
def test_a_clean_break_ends_the_setting_and_so_does_its_passing(ask, judgement, met):
    phone = Phone()
    events = [
        rennet(phone, 100),
        judged(phone, 110, "flocculated"),
        judged(phone, 131, judgement),
    ]
    assert judging(ask, events, 102)["met"] is met


def test_the_recipe_says_which_word_ends_a_judged_step(ask):
    phone = Phone()
    cut = STEPS["cut"]
    uneven = [judged(phone, 139, "uneven", "cut")]
    found = judging(ask, uneven, 131, cut)
    assert (found["met"], found["choices"]) == (False, ["uneven", "even"])
    # 0.5 x 540 s = 4.5 min is past; two minutes after the last look.
    assert found["from_ms"] == at(141)
    even = [*uneven, judged(phone, 141, "even", "cut")]
    assert judging(ask, even, 131, cut)["met"] is True


def test_a_last_word_takes_an_earlier_one_back(ask):
    phone = Phone()
    events = [judged(phone, 139, "even", "cut"), judged(phone, 140, "uneven", "cut")]
    assert judging(ask, events, 131, STEPS["cut"])["met"] is False


@pytest.mark.parametrize(
    ("end", "judgement", "met"),
    [
        # A recipe may leave the word out, or give one alone.
        ({"by": "person"}, "knitted", True),
        ({"by": "person"}, "not_knitted", False),
        ({"by": "judged", "judgement": "soft"}, "soft", True),
        ({"by": "judged", "judgement": "soft"}, "even", False),
    ],
)
def test_a_step_may_be_judged_without_a_list_of_words(ask, end, judgement, met):
    row = {
        **STEPS["cut"],
        "lasts": None,
        "end": end,
        "judge": {"choices": ["knitted", "not_knitted", "soft", "even"]},
    }
    found = judging(ask, [judged(Phone(), 140, judgement, "cut")], 131, row)
    assert found["met"] is met
    # Without a duration or a share the step is judged from its begin on.
    assert judging(ask, [], 131, row)["from_ms"] == at(131)
