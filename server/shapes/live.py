"""Schemas of the live view and of read-only links."""

from marshmallow import fields, validate

from server.shapes.http import FAR, Shape, uuid_text, whole, words

MOST_MAKES = 50


class BoardQuery(Shape):
    """How much of the board is wanted."""

    # A query is text, so the two words are named here.
    open = fields.Boolean(
        load_default=False,
        truthy={"true"},
        falsy={"false"},
        error_messages={"invalid": "not_yes_or_no"},
    )


class NewLink(Shape):
    """A read-only link to make."""

    name = words(80, required=True)
    makes = fields.List(
        uuid_text(),
        required=True,
        validate=[
            validate.Length(min=1, error="missing"),
            validate.Length(max=MOST_MAKES, error=f"too_many_makes:{MOST_MAKES}"),
        ],
        error_messages={"required": "missing", "invalid": "not_a_list"},
    )
    until_ms = whole(0, FAR, required=True)


class LinkShape(Shape):
    """A read-only link, without its secret."""

    id = fields.String(required=True)
    name = fields.String(required=True)
    makes = fields.List(fields.String(), required=True)
    made_by = fields.String(required=True)
    made_ms = fields.Integer(required=True)
    until_ms = fields.Integer(required=True)
    opened_ms = fields.Integer(required=True, allow_none=True)
    revoked_ms = fields.Integer(required=True, allow_none=True)


class MadeLink(LinkShape):
    """A link just made; its address is told only now."""

    url = fields.String(required=True)
    qr_svg = fields.String(required=True)


class LinkToken(Shape):
    """What stood in a link behind its #."""

    token = words(64, required=True)
