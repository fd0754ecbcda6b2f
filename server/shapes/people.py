"""Schemas of people, phones and pairing."""

from marshmallow import fields

from server.shapes.http import Shape, choice, uuid_text, words, yes_or_no

ROLE_CHOICES = ("viewer", "helper", "maker", "owner")


class PersonShape(Shape):
    """Who may act, and as what."""

    id = fields.String(required=True)
    name = fields.String(required=True)
    role = fields.String(required=True)


class ListedPerson(PersonShape):
    """A person, and whether they still act here."""

    active = fields.Boolean(required=True)


class NewPerson(Shape):
    """A person to add."""

    name = words(80, required=True)
    role = choice(ROLE_CHOICES, required=True)


class ChangedPerson(Shape):
    """What to change of a person; what is left out stays."""

    name = words(80)
    role = choice(ROLE_CHOICES)
    active = yes_or_no()


class DeviceShape(Shape):
    """A phone that is or was paired."""

    id = fields.String(required=True)
    name = fields.String(required=True)
    person = fields.String(required=True)
    paired_ms = fields.Integer(required=True)
    seen_ms = fields.Integer(required=True)
    removed_ms = fields.Integer(required=True, allow_none=True)


class ServerShape(Shape):
    """Which life of the database this is, and the server's clock."""

    epoch = fields.String(required=True)
    now = fields.Integer(required=True)
    rate = fields.Float(required=True)


class PairRequest(Shape):
    """A phone that asks to be paired."""

    code = words(64, required=True)
    device = uuid_text(required=True)
    device_name = words(80, required=True)
    person_name = words(80, allow_none=True)


class PairAnswer(Shape):
    """A phone just paired; its token is in the cookie."""

    person = fields.Nested(PersonShape, required=True)
    device = fields.String(required=True)
    server = fields.Nested(ServerShape, required=True)


class MeAnswer(PairAnswer):
    """Whose phone this is, and everyone who works here."""

    people = fields.List(fields.Nested(ListedPerson), required=True)


class PairingAnswer(Shape):
    """A code to pair one phone, to type or to scan."""

    code = fields.String(required=True)
    url = fields.String(required=True)
    qr_svg = fields.String(required=True)
    expires_ms = fields.Integer(required=True)
