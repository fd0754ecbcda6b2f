"""What a cheesemaker might type answers every sum; a renamed input is told at once."""

from server.core.sums import catalogue
from tests.browser.plausible import given_for
from tests.core.sums.asking import RULES


def test_every_sum_is_answered_by_what_a_maker_may_type():
    open_sums = {}
    for row in catalogue.layout(None):
        answer = catalogue.work_out(row["key"], given_for(row), {}, RULES)
        if not answer["values"]:
            open_sums[row["key"]] = answer["missing"] or answer["problems"]
    assert open_sums == {}
