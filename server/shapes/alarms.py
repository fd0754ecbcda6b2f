"""Schemas of alarms, pushes and the room's display."""

from marshmallow import fields, validate

from server.shapes.http import Shape, choice, whole, words, yes_or_no
from server.shapes.people import LANGUAGES

BASE64URL = r"[A-Za-z0-9_-]+=*\Z"


def _key(longest: int) -> fields.String:
    return fields.String(
        required=True,
        validate=[
            validate.Regexp(BASE64URL, error="not_base64url"),
            validate.Length(max=longest, error=f"too_long:{longest}"),
        ],
        error_messages={
            "required": "missing",
            "null": "missing",
            "invalid": "not_text",
        },
    )


class AlarmSettings(Shape):
    """What the owner decides about alarms."""

    escalate_min = whole(1, 120, required=True)


class WallWord(Shape):
    """That a room display lives, and whether its sound is unlocked."""

    sound = yes_or_no(required=True)


class Written(Shape):
    """That something was written down."""

    ok = fields.Boolean(required=True)


class CalendarQuery(Shape):
    """Which step a calendar file is about; left out for all that are long.

    Its language is that of who taps; left out, of the phone's own person.
    """

    step = words(60)
    language = choice(LANGUAGES)


class PushKeys(Shape):
    """The keys that a browser made for its subscription (RFC 8291)."""

    p256dh = _key(100)
    auth = _key(32)


class NewSubscription(Shape):
    """A browser that is to take pushes."""

    endpoint = words(2000, required=True)
    keys = fields.Nested(
        PushKeys, required=True, error_messages={"required": "missing"}
    )
    wants = choice(("all", "unanswered"), required=True)


class TestAnswer(Shape):
    """What the push service said to a test; 201 when it took it, 0 for no answer."""

    status = fields.Integer(required=True)
