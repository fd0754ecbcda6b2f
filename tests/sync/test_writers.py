"""Many phones at once, and a reader that follows: nothing lost, nothing twice."""

import random
import threading
import time
from concurrent.futures import ThreadPoolExecutor

from sqlalchemy import event as sql_event

from server import store, sync
from tests.sync.phones import NOON_MS, a_person, a_phone, a_uuid, note

WRITERS = 8
BATCHES = 12
SIZE = 5


def write(app, phone, shared, seed):
    rng = random.Random(seed)
    offset = seed * BATCHES * SIZE
    numbers = {}
    with app.app_context():
        for batch in range(BATCHES):
            first = offset + batch * SIZE + 1
            events = [
                note(phone.device, seq, phone.person) | {"id": a_uuid(rng)}
                for seq in range(first, first + SIZE)
            ]
            # Two writers serve each phone and both send one event of it.
            answer = sync.push([*events, shared[batch]], None, phone, NOON_MS)
            for result in answer.results:
                assert result["st"] in ("stored", "duplicate"), result
                numbers.setdefault(result["id"], result["n"])
                assert numbers[result["id"]] == result["n"]
    return numbers


def follow(app, done):
    seen, after = [], 0
    with app.app_context():
        epoch = store.epoch()
        while True:
            was_done = done.is_set()
            page = sync.pull(epoch, after, 7)
            seen += [(one["n"], one["event"]["id"]) for one in page.events]
            after = page.next
            if was_done and not page.more:
                return seen
            time.sleep(0.001)


def test_a_following_reader_misses_nothing_of_eight_writers(either_app):
    app = either_app
    person = a_person().id
    phones = [a_phone(person) for _ in range(WRITERS // 2)]
    # Slow commits, each by another time: numbers taken early and committed late
    # are what a reader with a cursor would step over.
    sql_event.listen(
        store.db.engine, "commit", lambda _: time.sleep(random.random() / 200)
    )
    shared = {
        phone: [note(phone.device, 10_000 + batch, person) for batch in range(BATCHES)]
        for phone in phones
    }
    done = threading.Event()
    with ThreadPoolExecutor(WRITERS + 1) as pool:
        reader = pool.submit(follow, app, done)
        writers = [
            pool.submit(write, app, phone, shared[phone], seed)
            for seed, phone in enumerate(phones * 2)
        ]
        told = {}
        try:
            for writer in writers:
                for id_, n in writer.result(timeout=60).items():
                    assert told.setdefault(id_, n) == n
        finally:
            done.set()
        seen = reader.result(timeout=60)
    assert [n for n, _ in seen] == list(range(1, len(seen) + 1))
    assert {id_: n for n, id_ in seen} == told
    assert len(seen) == BATCHES * (WRITERS * SIZE + len(phones))
