"""Where a drawn bar is filled to; all figures by hand."""

import pytest


@pytest.mark.parametrize(
    ("value", "start", "end", "share"),
    [
        (30.0, 20.0, 40.0, 0.5),  # half way
        (12, 0, 60, 0.2),  # days of 60, whole numbers as JSON sends them
        (0.0, 0.0, 60.0, 0.0),
        (60.0, 0.0, 60.0, 1.0),
        (-5.0, 0.0, 60.0, 0.0),  # before it began
        (99.0, 0.0, 60.0, 1.0),  # longer than asked
    ],
)
def test_a_share_is_how_much_of_the_way_is_behind(core, value, start, end, share):
    assert core("numbers.share", "share_frac", value, start, end) == pytest.approx(
        share, abs=1e-12
    )


def test_what_grows_has_no_band(core):
    bar = core("numbers.share", "grown", 15.0, 0.0, 60.0)
    assert bar == {
        "at_frac": 0.25,
        "low_frac": None,
        "high_frac": None,
        "aim_frac": None,
        "side": None,
    }


@pytest.mark.parametrize(
    ("value", "at", "side"),
    [
        (30.0, 1 / 3, "within"),  # on the low end
        (32.0, 2 / 3, "within"),
        (31.0, 1 / 2, "within"),
        (28.0, 0.0, "below"),  # a whole band below: the edge of the bar
        (29.0, 1 / 6, "below"),
        (40.0, 1.0, "above"),  # far above stays at the edge
    ],
)
def test_a_band_is_the_middle_third_of_its_bar(core, value, at, side):
    bar = core("numbers.share", "banded", value, 30.0, 32.0, 31.5)
    assert bar.pop("side") == side
    # 31.5 lies at 3.5 of the 6 from 28 to 34.
    wanted = {"at_frac": at, "low_frac": 1 / 3, "high_frac": 2 / 3, "aim_frac": 7 / 12}
    assert bar == pytest.approx(wanted, abs=1e-12)


def test_a_band_that_nothing_is_aimed_at_in_has_no_aim(core):
    assert core("numbers.share", "banded", 31.0, 30.0, 32.0)["aim_frac"] is None


@pytest.mark.parametrize(
    ("given", "said"),
    [
        ((None, 0.0, 60.0), "value None not_a_number"),
        ((5.0, 60.0, 60.0), "end 60.0 not_above 60.0"),
        ((5.0, 60.0, 0.0), "end 0.0 not_above 60.0"),
    ],
)
def test_no_way_between_the_ends_is_refused(core, given, said):
    with pytest.raises(ValueError, match=said):
        core("numbers.share", "share_frac", *given)
