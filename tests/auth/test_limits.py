import pytest

from server.auth import limits
from tests.sync.phones import NOON_MS


def count_wrong(source, times, now_ms=NOON_MS, rate=1):
    for _ in range(times):
        limits.count_wrong(source, now_ms, rate)


def wait_s(source, now_ms=NOON_MS, rate=1):
    return limits.wait_s(source, now_ms, rate)


def test_the_first_slips_cost_nothing(app):
    count_wrong("kitchen", 4)
    assert wait_s("kitchen") == 0


def test_each_further_one_doubles_the_wait_up_to_ten_minutes(app):
    count_wrong("kitchen", 4)
    waits = []
    for _ in range(9):
        count_wrong("kitchen", 1)
        waits.append(wait_s("kitchen"))
    assert waits == [10, 20, 40, 80, 160, 320, 600, 600, 600]


def test_one_source_does_not_slow_another(app):
    count_wrong("kitchen", 20)
    assert wait_s("cellar") == 0


def test_many_sources_together_are_slowed_as_well(app):
    for number in range(50):
        count_wrong(f"address {number}", 1)
    assert wait_s("never seen") == 10


def test_waiting_as_long_as_told_is_enough(app):
    count_wrong("kitchen", 5)
    assert wait_s("kitchen", NOON_MS + 9_001) == 1
    assert wait_s("kitchen", NOON_MS + 10_000) == 0


def test_an_hour_later_all_is_forgotten(app):
    count_wrong("kitchen", 20)
    later_ms = NOON_MS + 3_600_001
    count_wrong("kitchen", 1, later_ms)
    assert wait_s("kitchen", later_ms) == 0


def test_on_a_fast_clock_the_wait_is_in_real_seconds(app):
    count_wrong("kitchen", 5, rate=60)
    assert wait_s("kitchen", rate=60) == 10
    assert wait_s("kitchen", NOON_MS + 599_999, rate=60) == 1
    assert wait_s("kitchen", NOON_MS + 600_000, rate=60) == 0


@pytest.mark.parametrize("source", ["", "x" * 300])
def test_any_source_can_be_counted(app, source):
    count_wrong(source, 6)
    assert wait_s(source) == 20
