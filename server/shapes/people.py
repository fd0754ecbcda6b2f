"""Schemas of people, phones and pairing."""

from marshmallow import fields

from server.shapes.http import Shape, choice, uuid_text, words, yes_or_no

ROLE_CHOICES = ("viewer", "helper", "maker", "owner")
LANGUAGES = ("en", "es", "fr")
TEMP_UNITS = ("C", "F")
VOLUME_UNITS = ("L", "gal", "imp_gal")
MASS_UNITS = ("kg", "lb")
PRESSURE_UNITS = ("kPa", "psi")


class ToldReads(Shape):
    """How a person reads: language and units; null is as the phone says."""

    language = fields.String(required=True, allow_none=True)
    temp_unit = fields.String(required=True, allow_none=True)
    volume_unit = fields.String(required=True, allow_none=True)
    mass_unit = fields.String(required=True, allow_none=True)
    pressure_unit = fields.String(required=True, allow_none=True)


class Reads(Shape):
    """What to change of how a person reads; what is left out stays."""

    language = choice(LANGUAGES)
    temp_unit = choice(TEMP_UNITS)
    volume_unit = choice(VOLUME_UNITS)
    mass_unit = choice(MASS_UNITS)
    pressure_unit = choice(PRESSURE_UNITS)


class PersonShape(ToldReads):
    """Who may act, as what, and how they read."""

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


class ChangedPerson(Reads):
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
