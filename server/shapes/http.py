"""Marshmallow schemas of what goes over HTTP.

A message is "key" or "key:limit", so that an error can name the limit; the
words for a key are in one place, where errors are answered.
"""

from typing import Any

from marshmallow import RAISE, Schema, ValidationError, fields, validate

UUID = r"[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}\Z"
FAR = 2**53 - 1  # the largest whole number that the page can hold

_KEYS = {"required": "missing", "null": "missing", "validator_failed": "not_allowed"}


class Shape(Schema):
    """What all our shapes share: an unknown field is an error, not a shrug."""

    class Meta:
        """Marshmallow's own settings."""

        unknown = RAISE

    error_messages = {"unknown": "unknown_field", "type": "not_a_mapping"}  # noqa: RUF012


def _is_storable(value: str) -> None:
    # Half a surrogate pair is no text for SQLite, NUL none for PostgreSQL.
    if not value.isprintable():
        raise ValidationError("not_text")


def words(longest: int, **kwargs: Any) -> fields.String:
    """Return a field for words of a person, spaces around them dropped.

    Args:
        longest: most letters.
        **kwargs: what marshmallow's field takes.
    """
    return _Words(
        validate=[
            validate.Length(min=1, error="missing"),
            validate.Length(max=longest, error=f"too_long:{longest}"),
            _is_storable,
        ],
        error_messages={**_KEYS, "invalid": "not_text"},
        **kwargs,
    )


class _Words(fields.String):
    def _deserialize(self, value: Any, *args: Any, **kwargs: Any) -> str:
        text: str = super()._deserialize(value, *args, **kwargs)
        return text.strip()


def choice(choices: tuple[str, ...], **kwargs: Any) -> fields.String:
    """Return a field for one of some keys.

    Args:
        choices: the keys.
        **kwargs: what marshmallow's field takes.
    """
    return fields.String(
        validate=validate.OneOf(choices, error="not_a_choice:" + ",".join(choices)),
        error_messages={**_KEYS, "invalid": "not_text"},
        **kwargs,
    )


def uuid_text(**kwargs: Any) -> fields.String:
    """Return a field for a UUID in lower case.

    Args:
        **kwargs: what marshmallow's field takes.
    """
    return fields.String(
        validate=validate.Regexp(UUID, error="not_a_uuid"),
        error_messages={**_KEYS, "invalid": "not_text"},
        **kwargs,
    )


def whole(low: int, high: int, **kwargs: Any) -> fields.Integer:
    """Return a field for a whole number between two limits.

    Args:
        low: lowest number allowed.
        high: highest number allowed.
        **kwargs: what marshmallow's field takes.
    """
    return fields.Integer(
        validate=[
            validate.Range(min=low, error=f"too_low:{low}"),
            validate.Range(max=high, error=f"too_high:{high}"),
        ],
        error_messages={**_KEYS, "invalid": "not_whole", "too_large": "not_whole"},
        **kwargs,
    )


def yes_or_no(**kwargs: Any) -> fields.Boolean:
    """Return a field for true or false.

    Args:
        **kwargs: what marshmallow's field takes.
    """
    return fields.Boolean(
        truthy={True},
        falsy={False},
        error_messages={**_KEYS, "invalid": "not_yes_or_no"},
        **kwargs,
    )


class ErrorBody(Shape):
    """Why something was refused."""

    key = fields.String(required=True)
    text = fields.String(required=True)
    field = fields.String(required=True, allow_none=True)
    limit = fields.Raw(required=True, allow_none=True)


class ErrorAnswer(Shape):
    """The one shape of every error."""

    error = fields.Nested(ErrorBody, required=True)


class ProblemShape(Shape):
    """What is wrong with one field."""

    field = fields.String(allow_none=True)
    key = fields.String(required=True)
    limit = fields.Raw(allow_none=True)
    value = fields.Raw(allow_none=True)
