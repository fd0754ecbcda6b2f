"""A floor with people, phones that take pushes, and a log to ring from."""

import json
import uuid

from server import auth, live
from server.alarm import Delivery
from server.config import settings
from server.store import log, people, pushes
from tests.core.builders import at

REAL_MS = 1_800_000_000_000  # the real clock is not the server's
MINUTE = 60_000


def add(*events):
    rows = [
        log.NewEvent(
            event["id"],
            event["make"],
            event["device"],
            event["seq"],
            event["kind"],
            "0" * 64,
            json.dumps(event),
        )
        for event in events
    ]
    log.add_events(rows, at(0))


class Listener:
    """Someone whose phone takes pushes."""

    def __init__(self, service, name, role="maker", wants="all"):
        self.person = auth.add_person(name, role, at(0)).id
        self.device = str(uuid.uuid4())
        device = people.StoredDevice(
            self.device, name + "'s", self.person, at(0), at(0), None
        )
        people.save_device(device, self.device.replace("-", "").ljust(64, "0"))
        self.service = service
        self.browser = service.browser(name)
        posted = self.browser.posted()
        pushes.save_subscription(
            pushes.NewSubscription(
                id=name,
                endpoint=posted["endpoint"],
                **posted["keys"],
                device=self.device,
                wants=wants,
                page="https://floor.creamery.org",
            ),
            REAL_MS,
        )

    def heard(self):
        """Return what came for this phone, decrypted, in order."""
        return [
            self.browser.read(body)["notification"]
            for path, _, body in self.service.came
            if path == "/push/" + self.browser.endpoint.rsplit("/", 1)[-1]
        ]

    def titles(self):
        return [row["title"] for row in self.heard()]


def delivery():
    return Delivery(live.ask, settings())
