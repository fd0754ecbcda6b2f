"""One sender, although each worker has the thread."""

import time

from server import alarm
from server.alarm import Watch
from server.alarm.watch import WORK
from server.store.lease import lease_of

LONG_S = 10


class Counting:
    """Stands where pushes are sent from, and counts the rounds."""

    def __init__(self, broken=0):
        self.turns = 0
        self.broken = broken

    def turn(self, now_ms, real_ms):
        self.turns += 1
        if self.turns <= self.broken:
            raise OSError("no disk")


def until(condition):
    end_s = time.monotonic() + LONG_S
    while not condition():
        assert time.monotonic() < end_s
        time.sleep(0.01)


def test_of_two_workers_one_sends(app):
    sent = [Counting(), Counting()]
    watches = [Watch(app, one, poll_s=0.01) for one in sent]
    for watch in watches:
        watch.start()
    until(lambda: sum(one.turns for one in sent) >= 20)
    assert sorted(one.turns > 0 for one in sent) == [False, True]
    for watch in watches:
        watch.close()
        watch.join(LONG_S)


def test_when_the_one_that_sends_stops_the_other_goes_on_at_once(app):
    sent = [Counting(), Counting()]
    first, second = (Watch(app, one, poll_s=0.01) for one in sent)
    first.start()
    until(lambda: sent[0].turns > 0)
    second.start()
    first.close()
    first.join(LONG_S)
    until(lambda: sent[1].turns > 0)
    second.close()
    second.join(LONG_S)
    assert lease_of(WORK).holder == ""


def test_a_failed_round_is_logged_and_the_next_one_comes(app, caplog, monkeypatch):
    monkeypatch.setattr("server.alarm.watch.FAILED_POLL_S", 0.01)
    sends = Counting(broken=1)
    watch = Watch(app, sends, poll_s=0.01)
    watch.start()
    until(lambda: sends.turns >= 2)
    watch.close()
    watch.join(LONG_S)
    assert "could not look for alarms" in caplog.text


def test_a_worker_that_fails_at_each_look_is_followed_by_another(app, monkeypatch):
    monkeypatch.setattr("server.alarm.term.SILENT_S", 0.3)
    monkeypatch.setattr("server.alarm.term.BEAT_S", 0.05)
    monkeypatch.setattr("server.alarm.watch.FAILED_POLL_S", 0.01)
    fails, works = Counting(broken=10**9), Counting()
    first, second = (Watch(app, one, poll_s=0.01) for one in (fails, works))
    first.start()
    until(lambda: fails.turns > 0)
    second.start()
    until(lambda: works.turns > 3)
    for watch in (first, second):
        watch.close()
        watch.join(LONG_S)


def test_making_an_app_starts_no_thread(app):
    # It is made before the workers fork, and a thread would exist in none of them.
    assert app.extensions["vatside_alarms"]._thread is None
    alarm.close(app)
