"""Take a batch of events from a phone.

Rules. Each item gets its own verdict; nothing an item holds can refuse its
neighbours. What the log cannot take is kept beside it, as it came, with the
reason, so that a phone may let go of anything that got a verdict. Sending
again is harmless. A clock is never a reason to refuse.

How. Items are read and checked first. Then one transaction holds the head row:
what is here already is looked up under that lock, so two copies of one batch
that arrive together cannot both be new. The answer is made from what was
committed, never before.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, NamedTuple

from server.core.log.kinds.allowed import LEGAL_READING, may, role_for
from server.core.log.kinds.table import KINDS
from server.core.log.rights import legal
from server.shapes import Problem, Verdict
from server.shapes.events import Note
from server.store import held, log, look, people, writing
from server.store.head import locked_head
from server.sync.gates import Gates
from server.sync.items import Item, read_item, whole
from server.sync.proofs import judge_proof
from server.sync.quota import Quota, Used, after

MAX_EVENTS = 200
CLOCK_S = 120  # a phone's clock this wrong is told about


class Sender(NamedTuple):
    """The paired phone that sends, and whose it is."""

    device: str
    person: str
    removed: bool


@dataclass(frozen=True)
class PushAnswer:
    """What a push came to; true only after its transaction was committed."""

    epoch: str
    head: int
    results: list[Verdict]
    have: held.Have
    notes: list[Note]


def push(
    items: list[Any],
    t0_ms: Any,
    sender: Sender,
    now_ms: int,
    quota: Quota | None = None,
) -> PushAnswer:
    """Keep every item of a batch, in the log or aside.

    Args:
        items: what the phone sent under "events"; any JSON values.
        t0_ms: the phone's clock when it sent [ms]; anything else is ignored.
        sender: the phone.
        now_ms: server time [ms].
        quota: what a phone may send in a day; None for any amount.

    Returns:
        One verdict an item, in the same order, and what is here of this phone.

    Raises:
        OverQuotaError: the batch does not fit into the phone's day; nothing is kept.
    """
    batch = [read_item(raw) for raw in items]
    with writing():
        head = locked_head()
        desk = Desk(batch, as_now(sender))
        results = [desk.judge(item) for item in batch]
        texts = [item.text for item in desk.new.values()]
        spend(sender.device, texts + desk.texts_aside(), quota, now_ms)
        desk.keep(results, now_ms)
        answer = PushAnswer(
            epoch=head.epoch,
            head=head.n,
            results=results,
            have=held.count_held(sender.device, desk.seqs.get(sender.device, [])),
            notes=_clock_notes(t0_ms, now_ms),
        )
    for item, result in zip(batch, results, strict=True):
        notes = _clock_notes(_entered_ms(item), now_ms, only_ahead=True)
        if notes:
            result["notes"] = notes
    return answer


def spend(device: str, texts: list[str], quota: Quota | None, now_ms: int) -> None:
    """Count what is new of a batch against its phone's day.

    Args:
        device: id of the phone.
        texts: canonical texts of what is new here.
        quota: what the phone may send in a day; None for any amount.
        now_ms: server time [ms].

    Raises:
        OverQuotaError: the batch does not fit into the phone's day.
    """
    if quota is None or not texts:
        return
    size_bytes = sum(map(len, texts))
    used = Used(*held.used_until(device))
    held.use_until(device, *after(used, quota, len(texts), size_bytes, now_ms))


def as_now(sender: Sender) -> Sender:
    """Return the sender as it is by now: a push may have waited for its turn.

    Args:
        sender: the phone, as it asked.
    """
    device = people.find_device(sender.device)
    is_removed = device is not None and device.removed_ms is not None
    return sender._replace(removed=sender.removed or is_removed)


class Desk:
    """What must be known to judge one batch, and what is to be kept of it."""

    def __init__(self, batch: list[Item], sender: Sender) -> None:
        self.sender = sender
        self.people = {person.id: person for person in people.all_people()}
        refs = {item.uuid("ref") for item in batch}
        named = [id_ for id_ in (*refs, *(item.id for item in batch)) if id_]
        self.taken = log.taken_ids(named)
        self.sent = {one.id: one.raw for one in batch if one.id and not one.problems}
        self.aside = look.looks_by_hash(item.sha256 for item in batch)
        self.seqs: dict[str, list[int]] = {}  # numbers that are new here, by phone
        self.new: dict[str, Item] = {}  # by id, in order
        self.new_aside: dict[str, look.NewLook] = {}  # by hash, in order
        self.healed: list[int] = []
        self.proof_states: dict[str, str | None] = {}  # by id
        self.gates = Gates()

    def judge(self, item: Item) -> Verdict:
        """Give one verdict; numbers of new events are filled in by `keep`."""
        same = self._kept_hash(item.id)
        if same == item.sha256:
            return _verdict(item, "duplicate")
        before = self.aside.get(item.sha256)
        if before is not None and before.settled_as == "keep_aside":
            return _verdict(item, "needs_look", before.why)
        why = self._why_not(item, same)
        if why:
            if before is None and item.sha256 not in self.new_aside:
                self._set_aside(item, why)
            return _verdict(item, "needs_look", why)
        assert item.id is not None
        self.new[item.id] = item
        self.gates.add(item.raw)
        if before is not None:
            self.healed.append(before.n)
        else:
            self._count(item)
        return _verdict(item, "stored")

    def keep(self, results: list[Verdict], now_ms: int) -> None:
        """Write what was judged, and put the log's numbers into the verdicts."""
        rows = [
            _new_event(item)._replace(proof_state=self.proof_states.get(id_))
            for id_, item in self.new.items()
        ]
        numbers = log.add_events(rows, now_ms)
        look.add_looks(list(self.new_aside.values()), now_ms)
        if self.healed:
            look.settle_looks(
                self.healed, "accept", "sent again and found sound", None, now_ms
            )
        where = {id_: taken.n for id_, taken in self.taken.items()}
        where.update(zip(self.new, numbers, strict=True))
        for result in results:
            if result["st"] != "needs_look" and result["id"]:
                result["n"] = where[result["id"]]

    def texts_aside(self) -> list[str]:
        """Return what is to be put aside and was not before."""
        return [row.text for row in self.new_aside.values()]

    def _kept_hash(self, id_: str | None) -> str | None:
        if id_ is None:
            return None
        if id_ in self.new:
            return self.new[id_].sha256
        taken = self.taken.get(id_)
        return taken.sha256 if taken else None

    def _why_not(self, item: Item, same: str | None) -> list[Problem]:
        if same is not None:
            hashes = {"kept": same, "sent": item.sha256}
            return [{"field": "id", "key": "other_content", "limit": hashes}]
        if self.sender.removed:
            return [{"field": "device", "key": "removed_device", "limit": None}]
        return item.problems or self._not_allowed(item)

    def _not_allowed(self, item: Item) -> list[Problem]:
        if item.field("device") != self.sender.device:
            return [{"field": "device", "key": "other_device", "limit": None}]
        kind, about, roles = item.raw["kind"], self._about(item), []
        for id_ in (item.raw["person"], self.sender.person):
            person = self.people.get(id_)
            if person is None:
                return [{"field": "person", "key": "unknown_person", "limit": None}]
            if not person.active:
                return [{"field": "person", "key": "inactive_person", "limit": None}]
            # Both must be allowed: the lower of the two roles decides.
            if not may(person.role, kind, about):
                needed = role_for(kind, about)
                return [{"field": "kind", "key": "not_allowed", "limit": needed}]
            roles.append(person.role)
        judged = judge_proof(item.raw, about, self.sender.person)
        self.proof_states[item.raw["id"]] = judged.state
        return judged.problems or self.gates.refused(item.raw, roles)

    def _about(self, item: Item) -> str | None:
        """Return what an event is about, as far as that is here."""
        about: str | None = legal.about_of(item.raw, self._named)
        # An entry of a newer app stays aside; what is said of it may wait here.
        known = about in KINDS or about == LEGAL_READING
        return about if known else None

    def _named(self, id_: Any) -> dict[str, Any] | None:
        if not isinstance(id_, str):
            return None
        return log.event_of(id_) or self.sent.get(id_)

    def _set_aside(self, item: Item, why: list[Problem]) -> None:
        self._count(item)
        self.new_aside[item.sha256] = look.NewLook(
            id=item.id,
            device=self.sender.device,
            seq=item.seq(),
            person=item.plain("person") or self.sender.person,
            why=why,
            sha256=item.sha256,
            text=item.text,
        )

    def _count(self, item: Item) -> None:
        seq, device = item.seq(), self._counts_for(item)
        if seq is not None and device is not None:
            self.seqs.setdefault(device, []).append(seq)

    def _counts_for(self, item: Item) -> str | None:
        """Return the phone in whose counting an item is, None for nobody's."""
        is_own = item.field("device") == self.sender.device
        return self.sender.device if is_own else None


def _new_event(item: Item) -> log.NewEvent:
    assert item.id is not None
    return log.NewEvent(
        id=item.id,
        make=item.uuid("make"),
        device=item.uuid("device"),
        seq=item.seq(),
        kind=item.plain("kind"),
        sha256=item.sha256,
        text=item.text,
    )


def _verdict(item: Item, st: str, why: list[Problem] | None = None) -> Verdict:
    return {"id": item.said_id, "st": st, "n": None, "why": why}


def _entered_ms(item: Item) -> int | None:
    entered_ms, off_ms = whole(item.field("entered_ms")), whole(item.field("off_ms"))
    return None if entered_ms is None or off_ms is None else entered_ms + off_ms


def _clock_notes(then_ms: Any, now_ms: int, only_ahead: bool = False) -> list[Note]:
    then_ms = whole(then_ms)
    if then_ms is None:
        return []
    off_s = (now_ms - then_ms) / 1000
    if abs(off_s) <= CLOCK_S or (only_ahead and off_s > 0):
        return []
    return [{"key": "clock", "off_s": off_s}]


def new_event_of(raw: Mapping[str, Any]) -> log.NewEvent | None:
    """Return an item as the log would take it, None when it has no usable id.

    Args:
        raw: the item as it was sent.
    """
    item = read_item(dict(raw))
    return _new_event(item) if item.id else None
