"""One push: what it says and how a push service is to treat it.

The body is a declarative message: a browser that knows them shows it even when
the page's own worker fails; every other hands it to the worker, which shows the
same. Source of the format: W3C Push API, declarative push message.
"""

import base64
import hashlib
import json
from dataclasses import dataclass
from typing import Any

from server.alarm import words

DECLARATIVE = 8030
SHORTEST_TTL_S = 60
LONGEST_TTL_S = 4 * 3600
TEST_TTL_S = 3600


@dataclass(frozen=True)
class Message:
    """What is sent to every phone of one person.

    Args:
        what: "alarm", "owner" or "test".
        tag: which alarm it is about; a newer one with the same tag replaces it.
        title: first line.
        body: further lines.
        path: what opens on a tap, below the page's address.
        ttl_s: how long a push service may keep it for a phone out of reach [s].
        urgency: as RFC 8030 section 5.3 names it.
    """

    what: str
    tag: str
    title: str
    body: str
    path: str
    ttl_s: int
    urgency: str = "high"

    def text(self, page: str) -> str:
        """Return the message as it is encrypted.

        Args:
            page: address of the page that subscribed, without a path.
        """
        return json.dumps(
            {
                "web_push": DECLARATIVE,
                "notification": {
                    "title": self.title,
                    "body": self.body,
                    "tag": self.tag,
                    "navigate": page + self.path,
                },
            }
        )

    @property
    def topic(self) -> str:
        """Return the name under which a waiting push is replaced by a newer one."""
        # RFC 8030 section 5.4: at most 32 signs of the URL-safe alphabet.
        digest = hashlib.sha256(self.tag.encode()).digest()[:24]
        return base64.urlsafe_b64encode(digest).decode()


def of_alarms(
    alarms: list[dict[str, Any]], now_ms: int, language: str | None
) -> Message:
    """Return the one push about some alarms.

    Args:
        alarms: list of Alarm, the most urgent first.
        now_ms: now, by the server's clock [ms].
        language: of who reads it.
    """
    top = alarms[0]
    return Message(
        what="alarm",
        tag=top["id"],
        title=words.title(alarms, None, language),
        body=words.body(alarms, nobody=False, language=language),
        path="/#/alarms",
        ttl_s=_ttl_s(alarms, now_ms),
    )


def of_nobody(
    alarms: list[dict[str, Any]], escalate_s: int, language: str | None
) -> Message:
    """Return the push that tells the owner of alarms that nobody answered.

    Args:
        alarms: list of Alarm, the most urgent first.
        escalate_s: how long nobody had answered [s].
        language: of who reads it.
    """
    return Message(
        what="owner",
        tag="nobody/" + alarms[0]["id"],
        title=words.title(alarms, max(1, escalate_s // 60), language),
        body=words.body(alarms, nobody=True, language=language),
        path="/#/alarms",
        ttl_s=LONGEST_TTL_S,
    )


def of_test(weekly: bool, language: str | None) -> Message:
    """Return a push that only proves that pushes arrive.

    Args:
        weekly: whether the server sends it by itself.
        language: of who reads it.
    """
    said = words.texts(language)
    return Message(
        what="test",
        tag="test",
        title=said["test"],
        body=said["test_weekly" if weekly else "test_now"],
        path="/#/alarms/test",
        ttl_s=TEST_TTL_S,
        urgency="normal" if weekly else "high",
    )


def _ttl_s(alarms: list[dict[str, Any]], now_ms: int) -> int:
    # Until the owner is told: from then on, word of it reaches a person anyway.
    until = [row["escalates_ms"] for row in alarms if row["escalates_ms"] is not None]
    left_s = (max(until) - now_ms) // 1000 if until else SHORTEST_TTL_S
    return int(min(LONGEST_TTL_S, max(SHORTEST_TTL_S, left_s)))
