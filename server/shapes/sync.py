"""Schemas of push and pull."""

from marshmallow import fields

from server.shapes.http import FAR, ErrorAnswer, ProblemShape, Shape, uuid_text, whole
from server.shapes.people import ServerShape


class PushRequest(Shape):
    """A batch of events; documentation only, the items are judged one by one."""

    api = fields.Integer()
    app = fields.String()
    epoch = fields.String(allow_none=True)
    t0 = fields.Integer()
    events = fields.List(fields.Dict(), required=True)
    kept = fields.List(fields.Dict())


class NoteShape(Shape):
    """Something worth telling that refuses nothing."""

    key = fields.String(required=True)
    off_s = fields.Float(required=True)


class VerdictShape(Shape):
    """What became of one pushed item."""

    id = fields.String(required=True, allow_none=True)
    st = fields.String(required=True)
    n = fields.Integer(required=True, allow_none=True)
    why = fields.List(fields.Nested(ProblemShape), required=True, allow_none=True)
    notes = fields.List(fields.Nested(NoteShape))


class HaveShape(Shape):
    """What is here of one phone's own numbers."""

    upto = fields.Integer(required=True)
    missing = fields.List(fields.Integer(), required=True)
    repeated = fields.List(fields.Integer(), required=True)


class PushAnswerShape(ServerShape):
    """One verdict an item, in the order they were sent."""

    head = fields.Integer(required=True)
    results = fields.List(fields.Nested(VerdictShape), required=True)
    have = fields.Nested(HaveShape, required=True)
    kept = fields.List(fields.Nested(VerdictShape), required=True)
    notes = fields.List(fields.Nested(NoteShape), required=True)


class PullQuery(Shape):
    """From where on to read the log."""

    epoch = fields.String(load_default="")
    after = whole(0, FAR, load_default=0)
    limit = whole(1, FAR, load_default=500)


class PulledShape(Shape):
    """One event of the log with what the server added to it."""

    n = fields.Integer(required=True)
    recv_ms = fields.Integer(required=True)
    event = fields.Dict(required=True)
    receipt = fields.String(required=True)
    proof_state = fields.String()


class PullAnswer(ServerShape):
    """One page of the log."""

    events = fields.List(fields.Nested(PulledShape), required=True)
    next = fields.Integer(required=True)
    more = fields.Boolean(required=True)
    disk = fields.String(required=True)


class EpochAnswer(ErrorAnswer):
    """The reader's number is of another life of the database."""

    epoch = fields.String(required=True)


class HaveQuery(Shape):
    """Whose numbers to tell."""

    device = uuid_text(required=True)


class TimeAnswer(Shape):
    """The server's clock."""

    now = fields.Integer(required=True)
    rate = fields.Float(required=True)
