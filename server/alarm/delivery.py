"""Who is told what, once: alarms to those at work, unanswered ones to the owner.

Each person has a budget of rings, as on the screens (`core.alarm.sound`): what
may not ring yet waits and goes in one push with the rest. What was told is kept
in the database before the next round, so that another worker does not tell it
again; a push that was sent twice all the same replaces itself by its tag.
"""

import logging
from collections.abc import Callable, Iterable
from concurrent.futures import ThreadPoolExecutor
from typing import Any, NamedTuple

from cryptography.hazmat.primitives.asymmetric import ec

from server.alarm import keys, message, sender
from server.alarm.contact import contact
from server.alarm.endpoint import push_endpoint
from server.alarm.notified import Notified, Sent
from server.config import Settings
from server.core.alarm import alarms as core_alarms
from server.core.alarm.sound import quiet, sounding
from server.shapes.core.alarms import RingMemory
from server.store import alarms as kept
from server.store import pushes
from server.store.pushes import Subscription

Ask = Callable[..., Any]
Send = Callable[..., int]

log = logging.getLogger(__name__)

WEEK_MS = 7 * 86_400_000
DAY_MS = 86_400_000
TRIES = 3
RETRY_MS = 30_000
AT_ONCE = 8
NEW = {"memory": quiet(), "pushed": [], "told": []}


class Job(NamedTuple):
    """One push to one browser, and how often it was tried."""

    subscription: Subscription
    message: message.Message
    tries: int
    from_ms: int


class Delivery:
    """What one process has to send.

    Args:
        ask: puts a question to the core about the log as it stands.
        settings: the server's settings.
        send: hands a push to its service; see `sender.send`.
    """

    def __init__(self, ask: Ask, settings: Settings, send: Send = sender.send) -> None:
        self._ask = ask
        self._settings = settings
        self._send = send
        self._again: list[Job] = []
        self._notified = Notified()
        self._unworded: set[str] = set()

    def turn(self, now_ms: int, real_ms: int) -> None:
        """Send what is to be sent now.

        Args:
            now_ms: now, by the server's clock [ms].
            real_ms: now, by a real clock: people hear in real time [ms].
        """
        self._notified.catch_up()
        live = [row for row in pushes.subscriptions() if self._may_call(row)]
        address, _ = contact(self._settings)
        if not live or address is None:
            return
        key = self._key()  # asked for before anybody counts as told
        seconds = kept.escalate_s()
        standing = self._ask(core_alarms.alarms, now_ms, seconds)["alarms"]
        jobs = [job for job in self._again if _is_due(job, real_ms)]
        self._again = [job for job in self._again if not _is_due(job, real_ms)]
        for person in dict.fromkeys(row.person for row in live):
            theirs = [row for row in live if row.person == person]
            before = self._notified.heard(person) or NEW
            try:
                told, theirs_now = _for_person(
                    before, theirs, standing, (now_ms, real_ms), seconds
                )
            except (LookupError, TypeError, ValueError, AttributeError):
                # What cannot be worded for one must not silence the others.
                self._note_unworded(person)
                continue
            self._unworded.discard(person)
            if told != before:
                self._notified.save_heard(person, told)
            jobs += theirs_now
        if not self._notified.is_behind:  # or each test would be due again at once
            jobs += _weekly_tests(live, real_ms)
        self._send_all(jobs, address, key, real_ms)

    def _note_unworded(self, person: str) -> None:
        # Once: the next look is a second away.
        if person not in self._unworded:
            self._unworded.add(person)
            log.exception("no push could be worded for person %s", person)

    def _key(self) -> ec.EllipticCurvePrivateKey:
        return keys.private_key(self._settings.data_dir)

    def send_test(self, to: Subscription, real_ms: int) -> int:
        """Send one test at once.

        Args:
            to: the browser.
            real_ms: real time [ms].

        Returns:
            The service's status.
        """
        address, _ = contact(self._settings)
        if address is None or not self._may_call(to):
            return sender.UNREACHABLE
        job = Job(to, message.of_test(False, to.language), TRIES, real_ms)
        return self._send_all([job], address, self._key(), real_ms)[0]

    def _may_call(self, to: Subscription) -> bool:
        # Asked again here: what was kept by an older version is called by none.
        return push_endpoint(to.endpoint, self._settings.push_hosts) is not None

    def _send_all(
        self,
        jobs: list[Job],
        address: str,
        key: ec.EllipticCurvePrivateKey,
        real_ms: int,
    ) -> list[int]:
        if not jobs:
            return []
        # One service out of reach must not hold up the others.
        with ThreadPoolExecutor(AT_ONCE) as pool:
            statuses = list(
                pool.map(
                    lambda job: self._send(job.subscription, job.message, key, address),
                    jobs,
                )
            )
        for job, status in zip(jobs, statuses, strict=True):
            told = job.message
            to = job.subscription.id
            self._notified.note_sent(Sent(to, told.what, told.tag, status, real_ms))
            if _may_pass(status) and job.tries + 1 < TRIES:
                self._again.append(
                    job._replace(tries=job.tries + 1, from_ms=real_ms + RETRY_MS)
                )
        return statuses


def _is_due(job: Job, real_ms: int) -> bool:
    # A job that lies further ahead was put off before the clock was set back.
    return not 0 < job.from_ms - real_ms <= RETRY_MS


def _may_pass(status: int) -> bool:
    return status == sender.UNREACHABLE or status == 429 or status >= 500


def _for_person(
    before: dict[str, Any],
    theirs: list[Subscription],
    standing: list[dict[str, Any]],
    at_ms: tuple[int, int],
    escalate_s: int,
) -> tuple[dict[str, Any], list[Job]]:
    """Return what a person has been told then, and the pushes that tell it."""
    now_ms, real_ms = at_ms
    language = theirs[0].language
    told = dict(before)
    jobs: list[Job] = []
    at_work = [row for row in theirs if row.wants == "all"]
    if at_work:
        told, news = _news(told, "pushed", _unanswered(standing), real_ms)
        if news:
            jobs += _jobs(at_work, message.of_alarms(news, now_ms, language), real_ms)
    watching = [row for row in theirs if row.role == "owner" or row.wants != "all"]
    if watching:
        late = [row for row in _unanswered(standing) if row["escalated"]]
        told, news = _news(told, "told", late, real_ms)
        if news:
            jobs += _jobs(
                watching, message.of_nobody(news, escalate_s, language), real_ms
            )
    return told, jobs


def _news(
    told: dict[str, Any], name: str, standing: list[dict[str, Any]], real_ms: int
) -> tuple[dict[str, Any], list[dict[str, Any]]]:
    """Return what a person is to be told now, and what they then know."""
    known = [row["id"] for row in standing if row["id"] in told[name]]
    fresh = [row for row in standing if row["id"] not in told[name]]
    # A push sounds once; there is no ring that goes on and could be joined.
    memory: RingMemory = {"soundings": told["memory"]["soundings"], "ids": []}
    found = sounding(fresh, memory, real_ms)
    if not found["begins"]:
        return {**told, name: known}, []
    by_id = {row["id"]: row for row in fresh}
    after = {**told, "memory": found["memory"], name: known + found["ids"]}
    return after, [by_id[id_] for id_ in found["ids"]]


def _unanswered(standing: list[dict[str, Any]]) -> list[dict[str, Any]]:
    return [row for row in standing if row["state"] == "unacknowledged"]


def _jobs(to: Iterable[Subscription], what: message.Message, real_ms: int) -> list[Job]:
    return [Job(row, what, 0, real_ms) for row in to]


def _weekly_tests(live: list[Subscription], real_ms: int) -> list[Job]:
    """Return the tests due: a browser that heard nothing for a week may be dead."""
    due = [
        row
        for row in live
        if real_ms - (row.ok_ms or row.posted_ms) >= WEEK_MS
        and real_ms - (row.sent_ms or 0) >= DAY_MS
    ]
    return [Job(row, message.of_test(True, row.language), 0, real_ms) for row in due]
