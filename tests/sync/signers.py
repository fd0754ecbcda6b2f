"""A builder of people with a PIN, who prove what they record."""

import uuid
from dataclasses import dataclass, field

from cryptography.hazmat.primitives.asymmetric import ec
from cryptography.hazmat.primitives.asymmetric.utils import decode_dss_signature
from cryptography.hazmat.primitives.serialization import Encoding, PublicFormat

from server import seal
from server.store import pins
from tests.sync.phones import NOON_MS


@dataclass
class Signer:
    """A key such as a phone makes; nothing is wrapped, as no PIN opens it here."""

    person: str
    key: str = field(default_factory=lambda: str(uuid.uuid4()))
    private: ec.EllipticCurvePrivateKey = field(
        default_factory=lambda: ec.generate_private_key(ec.SECP256R1())
    )

    @property
    def sealed(self):
        public = self.private.public_key().public_bytes(
            Encoding.DER, PublicFormat.SubjectPublicKeyInfo
        )
        text = seal._text(public)
        return seal.Sealed(self.key, self.person, text, "c2FsdA", seal.ROUNDS, "d3JhcA")

    def sign(self, text):
        halves = decode_dss_signature(self.private.sign(text, seal.ECDSA))
        return seal._text(b"".join(half.to_bytes(32, "big") for half in halves))

    def proves(self, event):
        sig = self.sign(seal.act_text(event))
        return event | {"proof": {"by": "pin", "key": self.key, "sig": sig}}


def a_signer(person, now_ms=NOON_MS):
    """Give a person a PIN; needs an app's context."""
    signer = Signer(person)
    pins.save_pin(signer.sealed, None, now_ms)
    return signer
