"""One of all works, whatever the clocks of the box do, on each database."""

import threading

import pytest
from sqlalchemy.exc import OperationalError

from server import store
from server.alarm import term
from server.alarm.term import BEAT_S, SILENT_S, Term
from server.store import lease
from tests.sync.phones import bare_app, close_app

WORK = "alarms"


@pytest.fixture
def app(database_url):
    app = bare_app(database_url)
    with app.app_context():
        yield app
        store.db.session.remove()
    close_app(app)


class Seconds:
    """A clock that nobody can set back; each box has its own."""

    def __init__(self, now_s=0.0):
        self.now_s = now_s

    def __call__(self):
        return self.now_s


@pytest.fixture
def clock():
    return Seconds()


def work(one, clock, seconds):
    """Let a process look each second, as its thread does."""
    done = 0
    for _ in range(int(seconds)):
        clock.now_s += 1
        if one.may_work():
            done += 1
            one.worked()
    return done


def test_of_two_one_works_for_as_long_as_it_lives(app, clock):
    first, second = Term(WORK, "one", clock), Term(WORK, "two", clock)
    assert first.may_work()
    for _ in range(int(5 * SILENT_S)):
        assert work(first, clock, 1) == 1
        assert not second.may_work()


def test_a_dead_one_is_followed_within_half_a_minute(app, clock):
    Term(WORK, "one", clock).may_work()
    second = Term(WORK, "two", clock)
    assert work(second, clock, SILENT_S) == 0
    assert work(second, clock, 2) > 0


def test_boxes_whose_clocks_differ_by_years_agree(app):
    here, there = Seconds(5.0), Seconds(1e8)
    first, second = Term(WORK, "one", here), Term(WORK, "two", there)
    for _ in range(60):
        assert work(first, here, 1) == 1
        assert work(second, there, 1) == 0
    assert work(second, there, SILENT_S + 2) > 0  # the first is dead from here on
    assert not first.may_work()


@pytest.mark.parametrize("step_ms", [3_600_000, -3_600_000, 10**12])
def test_no_step_of_the_boxs_clock_changes_who_works(app, clock, monkeypatch, step_ms):
    first, second = Term(WORK, "one", clock), Term(WORK, "two", clock)
    assert work(first, clock, 10) == 10
    second.may_work()
    # Whatever time it is said to be, it is not asked.
    monkeypatch.setattr("time.time", lambda: step_ms / 1000)
    monkeypatch.setattr("time.time_ns", lambda: step_ms * 1_000_000)
    assert work(first, clock, 10) == 10
    assert not second.may_work()
    assert work(second, clock, SILENT_S + 2) > 0


def test_one_that_slept_stops_when_another_has_the_work(app, clock):
    first, second = Term(WORK, "one", clock), Term(WORK, "two", clock)
    first.may_work()
    work(second, clock, SILENT_S + 2)
    assert not first.may_work()
    assert second.may_work()


def test_one_that_fails_at_each_look_loses_the_work(app, clock):
    first, second = Term(WORK, "one", clock), Term(WORK, "two", clock)
    took = []
    for _ in range(int(SILENT_S) + 2):
        clock.now_s += 1
        took.append((first.may_work(), second.may_work()))
    assert took[0] == (True, False)
    assert took[-1][1]


def test_one_that_stops_gives_the_work_up_at_once_and_only_its_own(app, clock):
    first, second = Term(WORK, "one", clock), Term(WORK, "two", clock)
    first.may_work()
    second.give_up()
    assert not second.may_work()
    first.give_up()
    assert second.may_work()


def test_of_many_that_ask_at_once_one_gets_the_work(app, clock):
    start = threading.Barrier(6)
    got = []

    def ask(holder):
        with app.app_context():
            start.wait()
            got.append(Term(WORK, holder, clock).may_work())
            store.db.session.remove()

    threads = [threading.Thread(target=ask, args=(str(n),)) for n in range(6)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert sorted(got) == [False] * 5 + [True]


def test_the_status_believes_beats_that_it_has_seen(app, clock):
    holder, watcher = Term(WORK, "one", clock), Term(WORK, "two", clock)
    assert not watcher.is_done_by_some()
    work(holder, clock, 1)
    assert holder.is_done_by_some()
    late = Term(WORK, "three", clock)
    assert not late.is_done_by_some()  # it may be a dead one's
    work(holder, clock, BEAT_S + 1)
    assert late.is_done_by_some()
    assert watcher.is_done_by_some()
    clock.now_s += SILENT_S
    for one in (holder, watcher, late):
        assert not one.is_done_by_some()


def test_the_status_does_not_call_one_that_fails_at_each_look_well(app, clock):
    holder = Term(WORK, "one", clock)
    work(holder, clock, 3)
    for _ in range(int(SILENT_S) + 1):
        clock.now_s += 1
        holder.may_work()
    assert not holder.is_done_by_some()


def test_the_work_is_done_though_the_lease_cannot_be_written(app, clock, monkeypatch):
    first, second = Term(WORK, "one", clock), Term(WORK, "two", clock)
    first.may_work()

    def full(*_):
        raise OperationalError("UPDATE", {}, Exception("database or disk is full"))

    monkeypatch.setattr(term, "take_lease", full)
    assert work(first, clock, 60) == 60
    assert first.is_done_by_some()
    # And where the first has died, the second does not wait for the disk.
    assert work(second, clock, SILENT_S + 2) > 0


def test_a_beat_costs_the_disk_one_write_in_five_seconds(app, clock):
    first = Term(WORK, "one", clock)
    work(first, clock, 50)
    assert lease.lease_of(WORK).beat <= 50 / BEAT_S + 1
