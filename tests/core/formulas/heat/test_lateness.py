import pytest


@pytest.mark.parametrize(
    ("low_s", "high_s", "due_s", "basis", "late_s"),
    [
        (600, 720, 540, "time.not_in_time", 60),
        (600, 720, 660, "time.may_be_late", None),
        (600, 720, 720, "time.in_time", None),
        (600, None, 720, "time.may_be_late", None),
        (800, None, 720, "time.not_in_time", 80),
        (None, None, 720, "time.not_known", None),
    ],
)
def test_lateness_is_said_as_soon_as_the_range_says_so(
    core, low_s, high_s, due_s, basis, late_s
):
    found = core("formulas.heat.lateness", "lateness", low_s, high_s, due_s)
    assert (found["basis"], found["late_s"]) == (basis, late_s)


def test_a_range_the_wrong_way_round_is_refused(core):
    with pytest.raises(ValueError, match="high_s 500 below 600"):
        core("formulas.heat.lateness", "lateness", 600, 500, 720)
