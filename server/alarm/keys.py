"""The key that push services know this server by (VAPID, RFC 8292).

Made at first use and kept in the data folder, readable by the server's user
alone. A new key ends every subscription made with the old one, so none is made
while one lies there. A backup of the database does not hold it: on another
machine, copy the file too, or phones subscribe anew when they are next opened.
"""

import base64
from pathlib import Path

from cryptography.hazmat.primitives import serialization
from cryptography.hazmat.primitives.asymmetric import ec

from server.store.files import made_once

NAME = "push-key.pem"


def private_key(data_dir: Path) -> ec.EllipticCurvePrivateKey:
    """Return the server's key, made if there is none yet.

    Args:
        data_dir: folder of the data.

    Raises:
        ValueError: the file is not such a key.
    """
    file = data_dir / NAME
    key = serialization.load_pem_private_key(made_once(file, _new), password=None)
    if not isinstance(key, ec.EllipticCurvePrivateKey):
        raise ValueError(f"{file} is not a key for pushes; move it away.")
    return key


def public_text(key: ec.EllipticCurvePrivateKey) -> str:
    """Return the public half as browsers take it: uncompressed, base64url.

    Args:
        key: the server's key.
    """
    point = key.public_key().public_bytes(
        serialization.Encoding.X962, serialization.PublicFormat.UncompressedPoint
    )
    return base64.urlsafe_b64encode(point).decode().rstrip("=")


def _new() -> bytes:
    return ec.generate_private_key(ec.SECP256R1()).private_bytes(
        serialization.Encoding.PEM,
        serialization.PrivateFormat.PKCS8,
        serialization.NoEncryption(),
    )
