"""How a person proves an act with a PIN that nobody else ever sees.

Rules. A PIN is never kept, sent into the log or written down. Each person who set
one has a signing key (ECDSA P-256). Its public half lies on the server; its
private half lies on the server and on the creamery's phones, wrapped: sealed with
AES-GCM under a key that PBKDF2 makes of the PIN and the person's own salt. An act
carries a signature over its own content, so a proof fits no other act.

How. A phone with WebCrypto unwraps and signs by itself, with no network. Browsers
have WebCrypto on https alone; on plain http the server does the same with the
functions below, and the same check follows when the entry is sent.

What it does not do. Whoever takes a phone's storage apart can try PINs against the
wrapped key as fast as a computer allows: ROUNDS makes four digits last an hour on
one processor and eight most of a year, and a graphics card is a thousand times as
fast. It keeps one hand from signing for another; when a phone is lost, the owner
removes it and resets the PINs.

Do not touch: the texts that are signed. Old entries are checked again after a
restore, and `static/js/data/seal.js` writes the very same bytes.
"""

import base64
import binascii
import hashlib
import json
import secrets
import uuid
from decimal import Decimal
from typing import Any, NamedTuple

from cryptography.exceptions import (
    InvalidSignature,
    InvalidTag,
    UnsupportedAlgorithm,
)
from cryptography.hazmat.primitives import hashes
from cryptography.hazmat.primitives.asymmetric import ec
from cryptography.hazmat.primitives.asymmetric.utils import (
    decode_dss_signature,
    encode_dss_signature,
)
from cryptography.hazmat.primitives.ciphers.aead import AESGCM
from cryptography.hazmat.primitives.serialization import (
    Encoding,
    NoEncryption,
    PrivateFormat,
    PublicFormat,
    load_der_private_key,
    load_der_public_key,
)

# Half a second on a phone in hand; OWASP's password storage cheat sheet asks for
# as many with PBKDF2-HMAC-SHA256.
ROUNDS = 600_000
SALT_BYTES = 16
NONCE_BYTES = 12
HALF_BYTES = 32  # each of the two numbers of a signature
SIGNED = (
    "id", "make", "device", "person", "at_ms", "entered_ms", "off_ms",
    "kind", "v", "ref", "data",
)  # fmt: skip
ECDSA = ec.ECDSA(hashes.SHA256())


class Sealed(NamedTuple):
    """A signing key that a PIN opens; every field may be seen by anybody.

    Args:
        key: UUID of this key.
        person: id of whose it is.
        public: public half, DER in base64url.
        salt: of this person and key alone, base64url.
        rounds: of PBKDF2.
        wrapped: nonce and sealed private half, base64url.
    """

    key: str
    person: str
    public: str
    salt: str
    rounds: int
    wrapped: str


def act_text(event: dict[str, Any]) -> bytes:
    """Return what is signed of an event: all that a person answers for.

    Args:
        event: the event, with or without its proof.
    """
    return _signed_text("act", {name: event.get(name) for name in SIGNED})


def sealed_text(sealed: Sealed) -> bytes:
    """Return what is signed of a new key with the one before it.

    Args:
        sealed: the new key.
    """
    return _signed_text("pin", sealed._asdict())


def _signed_text(what: str, content: dict[str, Any]) -> bytes:
    # The first line keeps a signature of one sort from serving as another's.
    return f"vatside {what} 1\n{one_text(content)}".encode("ascii")


def one_text(value: Any) -> str:
    r"""Return the text of a JSON value that page and server write alike.

    Args:
        value: any JSON value.

    >>> one_text({"b": 37.0, "a": ["é", 0.00001]})
    '{"a":["\\u00e9",1e-5],"b":37}'
    """
    if isinstance(value, dict):
        rows = (f"{json.dumps(name)}:{one_text(value[name])}" for name in sorted(value))
        return "{" + ",".join(rows) + "}"
    if isinstance(value, list):
        return "[" + ",".join(map(one_text, value)) + "]"
    if isinstance(value, float):
        return str(int(value)) if value.is_integer() else _exponential(value)
    return json.dumps(value)


def _exponential(value: float) -> str:
    # The shortest digits are the same in both languages; where each begins to
    # write an exponent is not, so there always is one.
    sign, digits, exponent = Decimal(repr(value)).as_tuple()
    assert isinstance(exponent, int)
    head, rest = str(digits[0]), "".join(map(str, digits[1:]))
    power = exponent + len(digits) - 1
    return f"{'-' * sign}{head}{'.' * bool(rest)}{rest}e{power:+d}"


def is_signed(public: str, text: bytes, sig: str) -> bool:
    """Tell whether a signature over a text was made with the key behind `public`.

    Args:
        public: public half of a key, from a Sealed.
        text: what was signed.
        sig: the signature, base64url.
    """
    try:
        raw = _bytes(sig)
        key = load_der_public_key(_bytes(public))
        if not isinstance(key, ec.EllipticCurvePublicKey) or len(raw) != 2 * HALF_BYTES:
            return False
        halves = (raw[:HALF_BYTES], raw[HALF_BYTES:])
        der = encode_dss_signature(*(int.from_bytes(half, "big") for half in halves))
        key.verify(der, text, ECDSA)
    except (InvalidSignature, UnsupportedAlgorithm, ValueError):
        return False
    return True


def is_public_key(public: str) -> bool:
    """Tell whether a text is the public half of a key of our curve.

    Args:
        public: the text.
    """
    try:
        key = load_der_public_key(_bytes(public))
    except (UnsupportedAlgorithm, ValueError):
        return False
    if not isinstance(key, ec.EllipticCurvePublicKey):
        return False
    return isinstance(key.curve, ec.SECP256R1)


def new_sealed(person: str, pin: str) -> Sealed:
    """Return a new signing key that a PIN opens.

    Args:
        person: id of whose it is.
        pin: the PIN.
    """
    private = ec.generate_private_key(ec.SECP256R1())
    plain = private.private_bytes(Encoding.DER, PrivateFormat.PKCS8, NoEncryption())
    public = private.public_key().public_bytes(
        Encoding.DER, PublicFormat.SubjectPublicKeyInfo
    )
    key, salt = str(uuid.uuid4()), secrets.token_bytes(SALT_BYTES)
    nonce = secrets.token_bytes(NONCE_BYTES)
    cipher = AESGCM(_stretched(pin, salt, ROUNDS))
    wrapped = nonce + cipher.encrypt(nonce, plain, _bound(person, key))
    return Sealed(key, person, _text(public), _text(salt), ROUNDS, _text(wrapped))


def sign(sealed: Sealed, pin: str, text: bytes) -> str | None:
    """Return a signature in base64url; None when the PIN does not open the key.

    Args:
        sealed: the key.
        pin: the PIN.
        text: what to sign.
    """
    cipher = AESGCM(_stretched(pin, _bytes(sealed.salt), sealed.rounds))
    try:
        raw = _bytes(sealed.wrapped)
        plain = cipher.decrypt(
            raw[:NONCE_BYTES], raw[NONCE_BYTES:], _bound(sealed.person, sealed.key)
        )
        private = load_der_private_key(plain, None)
    except (InvalidTag, ValueError):
        return None
    assert isinstance(private, ec.EllipticCurvePrivateKey)
    halves = decode_dss_signature(private.sign(text, ECDSA))
    return _text(b"".join(half.to_bytes(HALF_BYTES, "big") for half in halves))


def _stretched(pin: str, salt: bytes, rounds: int) -> bytes:
    return hashlib.pbkdf2_hmac("sha256", pin.encode("utf-8"), salt, rounds)


def _bound(person: str, key: str) -> bytes:
    # A wrapped key given out under another's name must not open.
    return f"{person}/{key}".encode()


def _text(raw: bytes) -> str:
    return base64.urlsafe_b64encode(raw).rstrip(b"=").decode("ascii")


def _bytes(text: str) -> bytes:
    try:
        raw = text.encode("ascii")
        return base64.b64decode(raw + b"=" * (-len(raw) % 4), b"-_", validate=True)
    except (binascii.Error, UnicodeEncodeError) as error:
        raise ValueError("not base64url") from error
