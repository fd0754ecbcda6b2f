import threading
import time

from server.live import Follower

LONG_S = 10


class Log:
    def __init__(self):
        self.head = 0
        self.looks = 0
        self.broken = False

    def read(self):
        self.looks += 1
        if self.broken:
            raise OSError("no disk")
        return self.head


def follower(log, places=2):
    return Follower(log.read, places, poll_s=0.01)


def ended(condition):
    end_s = time.monotonic() + LONG_S
    while not condition():
        assert time.monotonic() < end_s
        time.sleep(0.005)
    return True


def threads():
    return [row for row in threading.enumerate() if row.name == "follower"]


def test_no_thread_runs_before_the_first_viewer_and_after_the_last():
    watched = follower(Log())
    assert threads() == []
    assert watched.enter()
    assert len(threads()) == 1
    assert watched.enter()
    assert len(threads()) == 1
    watched.leave()
    watched.leave()
    assert ended(lambda: threads() == [])


def test_a_viewer_beyond_the_last_place_is_refused_until_one_leaves():
    watched = follower(Log(), places=1)
    assert watched.enter()
    assert not watched.enter()
    watched.leave()
    assert watched.enter()
    watched.leave()
    assert ended(lambda: threads() == [])


def test_a_viewer_wakes_when_the_log_grows():
    log = Log()
    watched = follower(log)
    watched.enter()
    threading.Timer(0.05, lambda: setattr(log, "head", 7)).start()
    began_s = time.monotonic()
    assert watched.wait(6, LONG_S) == 7
    assert time.monotonic() - began_s < LONG_S / 2
    watched.leave()
    assert ended(lambda: threads() == [])


def test_a_wait_without_news_ends_with_the_old_head():
    log = Log()
    log.head = 3
    watched = follower(log)
    watched.enter()
    assert watched.wait(2, LONG_S) == 3
    assert watched.wait(3, 0.05) == 3
    watched.leave()
    assert ended(lambda: threads() == [])


def test_one_thread_looks_however_many_wait():
    log = Log()
    watched = Follower(log.read, 50, poll_s=0.1)
    for _ in range(50):
        watched.enter()
    time.sleep(0.35)
    assert 1 <= log.looks <= 5  # 0.35 s at 0.1 s a look, and one at once
    for _ in range(50):
        watched.leave()
    assert ended(lambda: threads() == [])


def test_a_failed_look_is_logged_and_viewers_stay(caplog):
    log = Log()
    log.broken = True
    watched = follower(log)
    watched.enter()
    assert ended(lambda: "could not read the head of the log" in caplog.text)
    assert watched.viewers == 1
    assert not watched.closed
    watched.leave()
    assert ended(lambda: threads() == [])


def test_closing_wakes_every_waiting_viewer():
    watched = follower(Log())
    watched.enter()
    threading.Timer(0.05, watched.close).start()
    began_s = time.monotonic()
    watched.wait(0, LONG_S)
    assert time.monotonic() - began_s < LONG_S / 2
    assert watched.closed
    assert not watched.enter()
    assert ended(lambda: threads() == [])
