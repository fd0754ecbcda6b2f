import threading

from server.core import desk
from server.core.creamery import kept as makes
from server.live import Folds
from tests.core import builders
from tests.sync.phones import NOON_MS, a_uuid, note


class Log:
    def __init__(self):
        self.epoch = "first"
        self.rows = []
        self.given = []
        self.lock = threading.Lock()

    def add(self, event):
        with self.lock:
            self.rows.append({"n": len(self.rows) + 1, "recv_ms": 0, "event": event})

    def after(self, n, limit):
        rows = self.rows[n : n + limit]
        self.given.extend(row["n"] for row in rows)
        return rows


def opening(make, name="Tuesday vat"):
    body = {"name": name, "batch": "1", "recipe": builders.recipe(), "milk_l": 300.0}
    return note(a_uuid(), 1, "ada", kind="make_opened", make=make, data=body)


def folds(log):
    return Folds(lambda: log.epoch, log.after)


def names(kept):
    return [row["name"] for row in kept.ask(desk.board, NOON_MS)["makes"]]


def test_each_entry_is_read_once_however_often_is_asked():
    log = Log()
    log.add(opening(a_uuid()))
    kept = folds(log)
    assert names(kept) == names(kept) == ["Tuesday vat"]
    log.add(opening(a_uuid(), "Friday vat"))
    assert sorted(names(kept)) == ["Friday vat", "Tuesday vat"]
    assert log.given == [1, 2]


def test_a_log_longer_than_one_read_is_folded_whole():
    log = Log()
    make = a_uuid()
    log.add(opening(make))
    device = a_uuid()
    for seq in range(1, 2501):
        log.add(note(device, seq, "ada", make=make))
    # The opening is a line of the record too.
    assert len(folds(log).ask(desk.record, make)) == 2501


def test_a_restored_log_is_folded_from_its_beginning():
    log = Log()
    log.add(opening(a_uuid()))
    kept = folds(log)
    assert names(kept) == ["Tuesday vat"]
    log.rows = []
    log.add(opening(a_uuid(), "Older vat"))
    log.epoch = "second"
    assert names(kept) == ["Older vat"]


def test_an_entry_that_the_core_cannot_use_stops_nothing():
    log = Log()
    log.add({"id": "nonsense"})
    log.add(opening(a_uuid()))
    assert names(folds(log)) == ["Tuesday vat"]


def test_many_may_ask_at_once():
    log = Log()
    make = a_uuid()
    log.add(opening(make))
    kept = folds(log)
    lengths = []

    def ask(seq):
        log.add(note(a_uuid(), seq, "ada", make=make))
        lengths.append(len(kept.ask(desk.record, make)))

    threads = [threading.Thread(target=ask, args=(seq,)) for seq in range(1, 21)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert len(lengths) == 20
    assert len(kept.ask(desk.record, make)) == 21
    assert sorted(log.given) == sorted(set(log.given))


def bad_opening(make):
    """Return an opening as an earlier check let it pass."""
    event = opening(make, "Old vat")
    event["data"]["recipe"]["steps"][0]["readings"] = None
    return event


def test_an_opening_that_no_longer_passes_leaves_the_other_makes():
    log = Log()
    log.add(bad_opening(a_uuid()))
    log.add(opening(a_uuid(), "Friday vat"))
    kept = folds(log)
    assert names(kept) == ["Friday vat"]
    board = kept.ask(desk.board, NOON_MS)
    assert [row["name"] for row in board["broken"]] == ["Old vat"]


def test_a_fault_is_written_down_once_however_often_is_asked(
    monkeypatch, caplog, makes_may_break
):
    def wrong(state, *_):
        if state["make"] == broken:
            raise KeyError("a fault")
        return right(state, *_)

    broken, right = a_uuid(), makes.view_of
    monkeypatch.setattr(makes, "view_of", wrong)
    log = Log()
    log.add(opening(broken, "Old vat"))
    log.add(opening(a_uuid(), "Friday vat"))
    kept = folds(log)
    assert names(kept) == names(kept) == ["Friday vat"]
    (line,) = [row for row in caplog.records if row.name == "server.live.folds"]
    assert broken in line.getMessage()
    assert line.exc_info
