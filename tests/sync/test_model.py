"""Phones, a server and everything that may go wrong between them, at random.

The model is plain: `truth` is what the server must hold. It grows with every
push that was committed, whether or not the phone heard of it, and goes back
with the server when a backup is restored. At the end every phone sends until
it has nothing unsent, and gives back what it had read of others and finds no
longer. Then the server must hold each event that any phone still has, had been
told was stored or had read, once, and every reader must have read exactly the
server's log.
"""

import contextlib
import os
import random
import shutil
import tempfile
from pathlib import Path

import pytest
from hypothesis import settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, initialize, precondition, rule
from sqlalchemy import event as sql_event

from server import auth, store, sync
from server.store import copies, look
from tests.sync.phones import NOON_MS, a_uuid, bare_app, close_app, note

PHONES = st.integers(0, 2)
DAY_MS = 86_400_000


class PowerCutError(Exception):
    """The server went down before COMMIT."""


class Phone:
    """What the page keeps: unsent, sent but kept, and what was read."""

    def __init__(self, person, rng):
        self.sender = sync.Sender(a_uuid(rng), person, False)
        self.rng = rng
        self.seq = 0
        self.clock_off_ms = 0
        self.unsent = {}
        self.sent = {}
        self.epoch = ""
        self.cursor = 0
        self.read = {}
        self.once_read = {}

    def tap(self, **changed):
        self.seq += 1
        at_ms = NOON_MS + self.clock_off_ms + self.seq
        event = note(self.sender.device, self.seq, self.sender.person)
        event |= {"id": a_uuid(self.rng), "at_ms": at_ms, "entered_ms": at_ms} | changed
        self.unsent[event["id"]] = event
        return event

    def hear(self, answer):
        self.meet_epoch(answer.epoch)
        for result in answer.results:
            # Only an item that got a verdict may leave the queue.
            if result["id"] in self.unsent:
                self.sent[result["id"]] = self.unsent.pop(result["id"])

    def meet_epoch(self, epoch):
        if self.epoch and epoch != self.epoch:
            self.start_over(epoch)
        self.epoch = epoch

    def start_over(self, epoch):
        self.unsent |= self.sent
        self.sent = {}
        self.once_read |= {one["event"]["id"]: one for one in self.read.values()}
        self.epoch, self.cursor, self.read = epoch, 0, {}

    def lost(self):
        """Return what was read before the server was set back, and not since."""
        here = {one["event"]["id"] for one in self.read.values()}
        return [one for id_, one in self.once_read.items() if id_ not in here]

    def pull(self, limit):
        try:
            page = sync.pull(self.epoch, self.cursor, limit)
        except sync.WrongEpoch as wrong:
            self.start_over(wrong.epoch)
            return True
        self.epoch = page.epoch
        for one in page.events:
            assert one["n"] not in self.read
            self.read[one["n"]] = one
        self.cursor = page.next
        return page.more


class PhonesAndServer(RuleBasedStateMachine):
    @initialize(seed=st.integers(0, 2**32))
    def start(self, seed):
        self.rng = random.Random(seed)
        self.folder = Path(tempfile.mkdtemp())
        self.file = self.folder / "vatside.sqlite3"
        self._serve()
        self.person = auth.add_person("Ada", "maker", NOON_MS).id
        self.phones = [Phone(self.person, self.rng) for _ in range(3)]
        self.truth = {}
        self.aside = {}
        self.backups = []

    def _serve(self):
        self.app = bare_app(f"sqlite:///{self.file}")
        self.context = self.app.app_context()
        self.context.push()

    def _stop(self):
        store.db.session.remove()
        self.context.pop()
        close_app(self.app)

    def teardown(self):
        try:
            self._drain()
            self._check()
        finally:
            self._stop()
            shutil.rmtree(self.folder)

    # What people do.

    @rule(which=PHONES, times=st.integers(1, 4))
    def tap(self, which, times):
        for _ in range(times):
            self.phones[which].tap()

    @rule(which=PHONES)
    def tap_on_a_newer_app(self, which):
        self.phones[which].tap(kind="whey_tasted")

    @rule(which=PHONES, known=st.booleans())
    def strike(self, which, known):
        phone = self.phones[which]
        ids = [*phone.unsent, *phone.sent] if known else []
        ref = self.rng.choice(ids) if ids else a_uuid(self.rng)
        phone.tap(kind="entry_struck", ref=ref, data={"why": "slip"})

    @rule(which=PHONES, days=st.integers(-1, 1))
    def clock_jumps(self, which, days):
        self.phones[which].clock_off_ms += days * DAY_MS

    @rule(which=PHONES)
    def install_anew(self, which):
        # What was not sent is gone with the phone; the server cannot know it.
        self.phones[which] = Phone(self.person, self.rng)

    @rule(which=PHONES, back=st.integers(1, 3))
    def phone_is_set_back(self, which, back):
        phone = self.phones[which]
        phone.seq = max(0, phone.seq - back)

    # What the network does.

    def _batch(self, phone, size, with_sent):
        offered = list(phone.unsent.values())
        if with_sent:
            offered += list(phone.sent.values())
        self.rng.shuffle(offered)
        batch = offered[:size]
        return batch + batch[: size // 3]  # some twice

    def sent_by(self, phone):
        """Push all that a phone has not sent, and note that the server has it."""
        events = dict(phone.unsent)
        answer = sync.push(list(events.values()), None, phone.sender, NOON_MS)
        self.truth |= events
        return answer

    @rule(
        which=PHONES,
        size=st.integers(1, 9),
        with_sent=st.booleans(),
        is_heard=st.booleans(),
    )
    def push(self, which, size, with_sent, is_heard):
        phone = self.phones[which]
        batch = self._batch(phone, size, with_sent)
        answer = sync.push(batch, None, phone.sender, NOON_MS)
        for event, result in zip(batch, answer.results, strict=True):
            known = event["kind"] != "whey_tasted"
            assert (result["st"] == "needs_look") is not known
            (self.truth if known else self.aside)[event["id"]] = event
        self._check()
        if is_heard:
            phone.hear(answer)

    @rule(which=PHONES, size=st.integers(1, 9))
    def push_into_a_power_cut(self, which, size):
        def cut(_connection):
            raise PowerCutError

        phone = self.phones[which]
        engine = store.db.engine
        sql_event.listen(engine, "commit", cut)
        with contextlib.suppress(PowerCutError):
            sync.push(self._batch(phone, size, False), None, phone.sender, NOON_MS)
            raise AssertionError("answered before COMMIT")
        sql_event.remove(engine, "commit", cut)
        self._check()

    @rule(which=PHONES, limit=st.integers(1, 5))
    def pull(self, which, limit):
        self.phones[which].pull(limit)

    # What happens to the server.

    @rule()
    def server_restarts(self):
        self._stop()
        self._serve()
        self._check()

    @precondition(lambda self: len(self.backups) < 4)
    @rule()
    def back_up(self):
        self._back_up()

    def _back_up(self):
        path = self.folder / f"backup-{len(self.backups)}"
        copies.copy(self.file, path)
        self.backups.append((path, dict(self.truth), dict(self.aside)))

    @precondition(lambda self: self.backups)
    @rule(data=st.data())
    def restore(self, data):
        self._restore(*data.draw(st.sampled_from(self.backups)))

    def _restore(self, path, truth, aside, is_told=True):
        self._stop()
        for old in self.folder.glob("vatside.sqlite3*"):
            old.unlink()
        shutil.copy(path, self.file)
        self._serve()
        if is_told:
            store.new_epoch()
        self.truth, self.aside = dict(truth), dict(aside)
        self._check()

    # What must hold.

    def _check(self):
        rows = store.every_event()
        assert [row.n for row in rows] == list(range(1, len(rows) + 1))
        assert {row.event["id"]: row.event for row in rows} == self.truth
        assert len(rows) == len(self.truth)
        aside = [one.event for one in look.open_looks()]
        assert {event["id"]: event for event in aside} == self.aside
        assert len(aside) == len(self.aside)

    def _drain(self):
        for phone in self.phones:
            # Twice: the first answer may tell of a new epoch.
            for _ in range(2):
                events = list(phone.unsent.values())
                answer = sync.push(events, None, phone.sender, NOON_MS)
                phone.hear(answer)
            assert not phone.unsent
            for event in phone.sent.values():
                known = event["kind"] != "whey_tasted"
                (self.truth if known else self.aside)[event["id"]] = event
        for phone in self.phones:
            self._give_back(phone)
        log = {row.n: row.event for row in store.every_event()}
        for phone in self.phones:
            while phone.pull(3):
                pass
            assert {n: one["event"] for n, one in phone.read.items()} == log
            assert phone.lost() == []
        for device in {event["device"] for event in self.truth.values()}:
            self._check_counting(device)

    def _give_back(self, phone):
        while phone.pull(3):
            pass
        kept = [
            {name: one[name] for name in ("event", "receipt")} for one in phone.lost()
        ]
        verdicts = sync.take_back(kept, phone.sender, NOON_MS)
        assert [one["st"] for one in verdicts] == ["stored"] * len(kept)
        self.truth |= {one["event"]["id"]: one["event"] for one in kept}

    def _check_counting(self, device):
        held = [*self.truth.values(), *self.aside.values()]
        seqs = [event["seq"] for event in held if event["device"] == device]
        have = sync.have(device)
        upto = max(seqs, default=0)
        missing = [seq for seq in range(1, upto) if seq not in seqs]
        repeated = sorted({seq for seq in seqs if seqs.count(seq) > 1})
        assert have == (upto, missing, repeated)


TestPhonesAndServer = PhonesAndServer.TestCase
# MODEL_EXAMPLES=500 sh tests/run draws more than the everyday run has time for.
TestPhonesAndServer.settings = settings(
    settings.get_profile("house"),
    max_examples=int(os.environ.get("MODEL_EXAMPLES", "15")),
    stateful_step_count=40,
)


@pytest.mark.parametrize("is_told", [True, False])
def test_what_a_backup_lacks_comes_back_from_the_phones(is_told):
    world = PhonesAndServer()
    world.start(seed=1)
    phone, reader = world.phones[:2]
    for _ in range(3):
        phone.tap()
        phone.hear(world.sent_by(phone))
        world._back_up()
    while reader.pull(5):
        pass
    assert len(reader.read) == len(phone.sent) == 3
    # Without a new epoch a reader's number above the head gives it away.
    world._restore(*world.backups[0], is_told=is_told)
    assert store.count_events() == 1
    phone.cursor = 3
    phone.pull(5)
    world.teardown()  # drains and checks
    assert len(world.truth) == 3
