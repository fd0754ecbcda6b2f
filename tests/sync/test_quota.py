"""What a phone may send in a day: generous, even, and never a loss."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from server.sync.quota import DAY_MS, OverQuotaError, Quota, Used, after

QUOTA = Quota(events=1000, size_bytes=100_000)
NOW_MS = 1_790_000_000_000


def send(used, events, size_bytes=0, now_ms=NOW_MS, quota=QUOTA):
    return after(used, quota, events, size_bytes, now_ms)


def test_a_whole_day_may_come_at_once_and_no_more():
    full = send(Used(), 1000)
    with pytest.raises(OverQuotaError) as over:
        send(full, 1)
    # A thousandth of the day frees room for one of a thousand.
    assert over.value.wait_ms == DAY_MS / 1000


def test_what_waits_fits_after_the_time_that_was_told():
    full = send(Used(), 990)
    with pytest.raises(OverQuotaError) as over:
        send(full, 50)
    wait_ms = over.value.wait_ms
    assert wait_ms == 40 * DAY_MS / 1000
    with pytest.raises(OverQuotaError):
        send(full, 50, now_ms=NOW_MS + wait_ms - 1)
    assert send(full, 50, now_ms=NOW_MS + wait_ms)


def test_size_is_counted_beside_the_number():
    full = send(Used(), 1, 99_000)
    with pytest.raises(OverQuotaError):
        send(full, 1, 2000)
    assert send(full, 1, 1000)


def test_after_a_day_of_rest_all_is_free_again():
    full = send(Used(), 1000, 100_000)
    assert send(full, 1000, 100_000, now_ms=NOW_MS + DAY_MS)


def test_what_costs_nothing_is_taken_at_any_time():
    full = send(Used(), 1000, 100_000)
    assert send(full, 0, 0) == full


def test_a_clock_put_back_closes_no_phone_out_for_longer_than_a_day():
    full = send(Used(), 1000, now_ms=NOW_MS + 365 * DAY_MS)
    with pytest.raises(OverQuotaError) as over:
        send(full, 1)
    assert over.value.wait_ms <= DAY_MS


def test_a_batch_larger_than_a_day_is_taken_when_the_day_is_free():
    small = Quota(events=10, size_bytes=10)
    used = send(Used(), 25, 5, quota=small)
    with pytest.raises(OverQuotaError):
        send(used, 1, 1, quota=small)


@given(st.lists(st.tuples(st.integers(0, 300), st.integers(0, DAY_MS)), max_size=30))
def test_over_any_time_no_more_is_taken_than_a_day_and_what_came_free(batches):
    used, now_ms, taken = Used(), NOW_MS, 0
    for events, rest_ms in batches:
        now_ms += rest_ms
        try:
            used = send(used, events, now_ms=now_ms)
        except OverQuotaError:
            continue
        taken += events
        free = QUOTA.events * (1 + (now_ms - NOW_MS) / DAY_MS)
        assert taken <= free + 1  # whole milliseconds
