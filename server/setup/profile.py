"""The root certificate as an iPhone takes it."""

import plistlib
import uuid

from server.shapes.setup import SetupFacts

# Any fixed UUID: those made from it are the same on each run, so that a phone
# that takes the profile twice has it once.
_OURS = uuid.UUID("7b2b7a3e-5c1e-4d57-9c56-0f2d5ab7a4c1")
IDENTIFIER = "vatside.root"
NAME = "Vatside: this creamery's server"
ABOUT = (
    "Lets this phone open the creamery's own server over https. It counts for the "
    "names of this room and for addresses within a local network, for nothing on "
    "the internet. Remove it in Settings, General, VPN & Device Management."
)


def profile(facts: SetupFacts) -> bytes:
    """Return a configuration profile with the root certificate in it.

    Args:
        facts: what the set-up page gives.
    """
    root = {
        "PayloadType": "com.apple.security.root",
        "PayloadVersion": 1,
        "PayloadIdentifier": f"{IDENTIFIER}.certificate",
        "PayloadUUID": _uuid(facts, "certificate"),
        "PayloadDisplayName": NAME,
        "PayloadCertificateFileName": "vatside-root.cer",
        "PayloadContent": facts.root_der,
    }
    return plistlib.dumps(
        {
            "PayloadType": "Configuration",
            "PayloadVersion": 1,
            "PayloadIdentifier": IDENTIFIER,
            "PayloadUUID": _uuid(facts, "profile"),
            "PayloadDisplayName": NAME,
            "PayloadDescription": ABOUT,
            "PayloadRemovalDisallowed": False,
            "PayloadContent": [root],
        }
    )


def _uuid(facts: SetupFacts, what: str) -> str:
    return str(uuid.uuid5(_OURS, f"{facts.root_sha256} {what}")).upper()
