"""Schemas of PINs. No field ever carries a PIN out of the server."""

from marshmallow import fields, validate

from server.shapes.http import FAR, Shape, uuid_text, whole, words

BASE64URL = r"[A-Za-z0-9_-]+\Z"


def base64url(longest: int, **kwargs: object) -> fields.String:
    """Return a field for bytes as text.

    Args:
        longest: most letters.
        **kwargs: what marshmallow's field takes.
    """
    return fields.String(
        validate=[
            validate.Length(max=longest, error=f"too_long:{longest}"),
            validate.Regexp(BASE64URL, error="not_base64url"),
        ],
        error_messages={
            "required": "missing",
            "null": "missing",
            "invalid": "not_text",
        },
        **kwargs,  # type: ignore[arg-type]
    )


class SealedShape(Shape):
    """A signing key that a PIN opens, its private half wrapped."""

    key = uuid_text(required=True)
    public = base64url(200, required=True)
    salt = base64url(40, required=True)
    rounds = whole(1, FAR, required=True)
    wrapped = base64url(400, required=True)


class NewPin(SealedShape):
    """A new key, and a signature over it with the key before, if there was one."""

    sig = base64url(86, allow_none=True)


class PlainPin(Shape):
    """A new PIN, and the one before, for a page that has no cryptography."""

    pin = words(40, required=True)
    before = words(40, allow_none=True)


class ActShape(Shape):
    """What is signed of an event."""

    id = uuid_text(required=True)
    make = uuid_text(required=True)
    device = uuid_text(required=True)
    at_ms = whole(0, FAR, required=True)
    entered_ms = whole(0, FAR, required=True)
    off_ms = whole(-FAR, FAR, required=True)
    kind = words(64, required=True)
    v = whole(1, 1000, required=True)
    ref = uuid_text(required=True, allow_none=True)
    data = fields.Dict(required=True)


class PinTry(Shape):
    """A PIN, and the act that it is to prove."""

    pin = words(40, required=True)
    act = fields.Nested(ActShape, required=True)


class ProofShape(Shape):
    """The proof of one act, to be sent with it."""

    by = fields.String(required=True)
    key = fields.String(required=True)
    sig = fields.String(required=True)


class KnownPin(SealedShape):
    """Whose key it is, and where and when it was set."""

    person = fields.String(required=True)
    device = fields.String(required=True, allow_none=True)
    set_ms = fields.Integer(required=True)


class GrantShape(Shape):
    """Until when a person may set a PIN on any phone."""

    person = fields.String(required=True)
    until_ms = fields.Integer(required=True)


class PinsAnswer(Shape):
    """Who has a PIN, and who may set one on any phone."""

    pins = fields.List(fields.Nested(KnownPin), required=True)
    granted = fields.List(fields.Nested(GrantShape), required=True)
