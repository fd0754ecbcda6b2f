"""Schemas of recipes, makes, and what needs a look."""

from marshmallow import fields

from server.shapes.http import (
    FAR,
    ErrorAnswer,
    ProblemShape,
    Shape,
    choice,
    whole,
    words,
)


class RecipeTitle(Shape):
    """One recipe in the list, its newest version."""

    id = fields.String(required=True)
    version = fields.Integer(required=True)
    title = fields.Dict(required=True)
    about = fields.Dict(required=True)


class UnsoundAnswer(ErrorAnswer):
    """The error of a recipe that no make could follow, and all that is wrong."""

    problems = fields.List(fields.Nested(ProblemShape), required=True)


class LiveQuery(Shape):
    """From where on to follow the log."""

    after = whole(0, FAR, load_default=0)


class LookShape(Shape):
    """One item that the log did not take, as it came."""

    n = fields.Integer(required=True)
    id = fields.String(required=True, allow_none=True)
    device = fields.String(required=True)
    person = fields.String(required=True)
    recv_ms = fields.Integer(required=True)
    why = fields.List(fields.Nested(ProblemShape), required=True)
    event = fields.Raw(required=True, allow_none=True)


class Settlement(Shape):
    """What a person decided about an item, and why."""

    why = words(400, required=True)
    # `as` is a word of Python.
    way = choice(("accept", "keep_aside"), required=True, data_key="as")


class Settled(Shape):
    """That it was written down."""

    n = fields.Integer(required=True)
