import json
import threading
import time

import pytest

from server.live import Hub, Mailbox, Place, Reads
from server.live.rounds import BATCH
from server.live.viewer import Pace

LONG_S = 10
FAST = Pace(look_s=0.01, failed_s=0.02, check_s=0.02, comment_s=5, take_s=5)


class Log:
    def __init__(self, count=0):
        self.rows = []
        self.given = []
        self.bad = set()
        self.checked = []
        self.is_broken = False
        self.looks = 0
        self.grow(count)

    def grow(self, count):
        for _ in range(count):
            n = len(self.rows) + 1
            self.rows.append({"n": n, "recv_ms": 1000 + n, "event": {"id": str(n)}})

    def head(self):
        self.looks += 1
        if self.is_broken:
            raise OSError("no disk")
        return len(self.rows)

    def after(self, n, limit):
        self.given.append(n)
        return self.rows[n : n + limit]

    def still_good(self, tokens):
        self.checked.append(set(tokens))
        return set(tokens) - self.bad


class Watch:
    """A viewer that reads in a thread of its own."""

    def __init__(self, hub, after=0, name="ada"):
        self.place = Place(name, name, name)
        assert hub.enter(self.place)
        self.mailbox = Mailbox()
        self.texts = []
        self.came = threading.Condition()
        self.thread = threading.Thread(target=self._read, daemon=True)
        self.thread.start()
        hub.watch(self.place, after, self.mailbox)

    def _read(self):
        for part in self.mailbox.parts():
            with self.came:
                self.texts.append(part.decode())
                self.came.notify_all()

    def numbers(self):
        found = []
        for block in "".join(self.texts).split("\n\n"):
            lines = block.split("\n")
            if lines[0].startswith("id: "):
                found.append(int(lines[0][4:]))
                assert json.loads(lines[1][6:])["n"] == found[-1]
        return found

    def until(self, condition):
        with self.came:
            assert self.came.wait_for(lambda: condition(self), LONG_S)

    def has_ended(self):
        self.thread.join(LONG_S)
        return not self.thread.is_alive()


@pytest.fixture
def begin():
    opened = []

    def begin_one(log, places=20, pace=FAST):
        hub = Hub(Reads(log.head, log.after, log.still_good), places, pace)
        opened.append(hub)
        return hub

    yield begin_one
    for hub in opened:
        hub.close()
        hub.join(LONG_S)
        assert not hub.is_running


def until(condition):
    end_s = time.monotonic() + LONG_S
    while not condition():
        assert time.monotonic() < end_s
        time.sleep(0.005)
    return True


def test_no_thread_runs_before_the_first_viewer_and_after_the_last(begin):
    hub = begin(Log())
    assert not hub.is_running
    first, second = Place("ada", "1", "a"), Place("ben", "2", "b")
    assert hub.enter(first)
    assert hub.is_running
    assert hub.enter(second)
    hub.leave(first)
    hub.leave(second)
    assert until(lambda: not hub.is_running)
    assert hub.viewers == 0


def test_a_thread_that_ended_begins_again_with_the_next_viewer(begin):
    log = Log(2)
    hub = begin(log)
    for _ in range(3):
        viewer = Watch(hub)
        viewer.until(lambda one: one.numbers() == [1, 2])
        hub.leave(viewer.place)
        assert viewer.has_ended()
        assert until(lambda: not hub.is_running)


def test_a_stream_brings_what_came_after_its_cursor_once_and_in_order(begin):
    viewer = Watch(begin(Log(5)), after=2)
    viewer.until(lambda one: one.numbers() == [3, 4, 5])


def test_a_long_absence_is_caught_up_whole(begin):
    count = 2 * BATCH + 203
    viewer = Watch(begin(Log(count)))
    viewer.until(lambda one: len(one.numbers()) == count)
    assert viewer.numbers() == list(range(1, count + 1))


def test_a_read_cut_short_by_its_bytes_is_gone_on_with(begin):
    log = Log(10)
    whole, log.after = log.after, lambda n, limit: whole(n, 3)
    viewer = Watch(begin(log))
    viewer.until(lambda one: one.numbers() == list(range(1, 11)))


def test_a_failed_read_is_made_good_later(begin, caplog):
    log = Log(3)
    whole, failures = log.after, [OSError("no disk")]

    def after(n, limit):
        if failures:
            raise failures.pop()
        return whole(n, limit)

    log.after = after
    viewer = Watch(begin(log))
    viewer.until(lambda one: one.numbers() == [1, 2, 3])
    assert "could not read the log after 0" in caplog.text


def test_an_event_stored_while_the_viewer_waits_is_brought(begin):
    log = Log(1)
    viewer = Watch(begin(log))
    viewer.until(lambda one: one.numbers() == [1])
    log.grow(2)
    viewer.until(lambda one: one.numbers() == [1, 2, 3])


def test_the_log_is_read_once_for_all_that_stand_at_the_same_number(begin):
    log = Log()
    hub = begin(log)
    viewers = [Watch(hub, name=f"p{n}") for n in range(10)]
    assert until(lambda: log.looks > 2)
    log.grow(1)
    for viewer in viewers:
        viewer.until(lambda one: one.numbers() == [1])
    # One that was not admitted yet when the log grew may have its own read.
    assert log.given.count(0) <= 2


def test_a_cursor_beyond_the_log_waits_in_peace(begin):
    log = Log(2)
    hub = begin(log)
    viewer = Watch(hub, after=9)
    assert until(lambda: log.looks > 3)
    assert viewer.texts == []
    assert hub.viewers == 1


def test_a_silent_stream_gives_signs_of_life(begin):
    pace = Pace(look_s=0.01, comment_s=0.02)
    viewer = Watch(begin(Log(), pace=pace))
    viewer.until(lambda one: one.texts.count(": still here\n\n") >= 3)


def test_a_stream_ends_when_its_time_is_over(begin):
    hub = begin(Log(), pace=Pace(look_s=0.01, life_s=0.05))
    assert Watch(hub).has_ended()
    assert hub.viewers == 0


def test_all_streams_end_when_the_server_stops(begin):
    hub = begin(Log())
    viewers = [Watch(hub, name=f"p{n}") for n in range(5)]
    hub.close()
    assert all(viewer.has_ended() for viewer in viewers)
    assert not hub.enter(Place("eve", "e", "e"))


def test_a_stream_that_comes_after_the_stop_is_closed_at_once(begin):
    hub = begin(Log())
    late = Place("ada", "ada", "ada")
    assert hub.enter(late)
    hub.close()
    hub.join(LONG_S)
    mailbox = Mailbox()
    hub.watch(late, 0, mailbox)
    assert list(mailbox.parts()) == []


def test_a_failed_look_is_logged_and_viewers_stay(begin, caplog):
    log = Log()
    log.is_broken = True
    hub = begin(log)
    viewer = Watch(hub)
    assert until(lambda: "could not read the head of the log" in caplog.text)
    assert hub.viewers == 1
    log.is_broken = False
    log.grow(1)
    viewer.until(lambda one: one.numbers() == [1])


def test_a_phone_that_may_no_longer_look_is_shown_nothing_more(begin):
    log = Log()
    hub = begin(log)
    removed, other = Watch(hub, name="ada"), Watch(hub, name="ben")
    log.bad.add("ada")
    assert removed.has_ended()
    log.grow(1)
    other.until(lambda one: one.numbers() == [1])
    assert removed.numbers() == []


def test_who_may_look_is_asked_once_for_all(begin):
    log = Log()
    hub = begin(log)
    for n in range(10):
        Watch(hub, name=f"p{n}")
    wanted = {f"p{n}" for n in range(10)}
    assert until(lambda: wanted in log.checked)


def test_a_viewer_that_takes_nothing_is_dropped_and_holds_nobody_up(begin):
    log = Log()
    hub = begin(log, pace=Pace(look_s=0.01, take_s=0.05))
    stuck = Place("ada", "ada", "ada")
    assert hub.enter(stuck)
    hub.watch(stuck, 0, Mailbox())  # nobody reads it
    other = Watch(hub, name="ben")
    log.grow(3 * BATCH)
    other.until(lambda one: len(one.numbers()) == 3 * BATCH)
    assert until(lambda: hub.viewers == 1)


class Bewitched(Mailbox):
    """A channel that fails in a way that nobody thought of."""

    def flush(self):
        raise ValueError("as nobody thought")


def test_a_viewer_that_fails_strangely_takes_no_other_with_it(begin, caplog):
    log = Log()
    hub = begin(log)
    strange = Place("ada", "ada", "ada")
    assert hub.enter(strange)
    hub.watch(strange, 0, Bewitched())
    other = Watch(hub, name="ben")
    log.grow(1)
    other.until(lambda one: one.numbers() == [1])
    assert hub.viewers == 1
    assert "a viewer is given up" in caplog.text


def test_no_more_than_one_batch_is_kept_for_a_slow_viewer(begin):
    log = Log(3 * BATCH)
    hub = begin(log)
    slow = Place("ada", "ada", "ada")
    assert hub.enter(slow)
    mailbox = Mailbox()
    hub.watch(slow, 0, mailbox)
    assert until(lambda: mailbox.unsent > 0)
    looks = log.looks
    assert until(lambda: log.looks > looks + 3)
    assert log.given == [0]


def test_a_stream_that_gave_way_before_it_began_is_closed(begin):
    hub = begin(Log())
    places = [Place("ada", "pocket", "a") for _ in range(7)]
    assert all(hub.enter(place) for place in places)
    mailbox = Mailbox()
    hub.watch(places[0], 0, mailbox)
    assert list(mailbox.parts()) == []
    assert hub.viewers == 6
