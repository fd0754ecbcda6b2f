"""A hand on Firefox, by WebDriver BiDi.

Firefox listens for BiDi itself, so no driver beside it is needed; Selenium's
socket carries the commands.
"""

import json
import re
import shutil
import subprocess
from types import MappingProxyType

from selenium.webdriver.remote.websocket_connection import WebSocketConnection

from tests.browser.hand import WAIT_S, GoneError, Hand

NAMES = ("firefox-esr", "firefox")
LISTENS = re.compile(r"WebDriver BiDi listening on (ws://\S+)")
GONE = ("move target out of bounds", "no such element", "no such node")
PHONE = {"width": 412, "height": 839}
# A closed network: nothing may be fetched but from the creamery.
SETTINGS = {
    "app.normandy.enabled": False,
    "app.update.auto": False,
    "browser.safebrowsing.malware.enabled": False,
    "browser.safebrowsing.phishing.enabled": False,
    "datareporting.policy.dataSubmissionEnabled": False,
    "dom.serviceWorkers.testing.enabled": False,
    "network.captive-portal-service.enabled": False,
    "network.connectivity-service.enabled": False,
    "services.settings.server": "",
}


class Firefox(Hand):
    """Firefox with a profile of its own, at the size of a phone.

    Args:
        folder: where its profile lies.
    """

    name = "Firefox"
    settings = MappingProxyType({})  # further preferences of a subclass

    @staticmethod
    def is_here():
        return any(shutil.which(name) for name in NAMES)

    def __init__(self, folder):
        folder.mkdir(exist_ok=True)
        lines = [
            f"user_pref({json.dumps(key)}, {json.dumps(value)});"
            for key, value in {**SETTINGS, **self.settings}.items()
        ]
        (folder / "user.js").write_text("\n".join(lines))
        program = next(filter(None, map(shutil.which, NAMES)))
        self.said = folder / "words.txt"
        with self.said.open("w") as said:
            self.process = subprocess.Popen(
                [
                    *(program, "--headless", "--no-remote"),
                    *("--profile", str(folder), "--remote-debugging-port", "0"),
                ],
                stdout=subprocess.DEVNULL,
                stderr=said,
            )
        self.socket = WebSocketConnection(self._address() + "/session", WAIT_S, 0.005)
        self._ask("session.new", capabilities={})
        tree = self._ask("browsingContext.getTree")
        self.context = tree["contexts"][0]["context"]
        self._at("browsingContext.setViewport", viewport=PHONE)

    def _address(self):
        for _ in range(WAIT_S * 20):
            found = LISTENS.search(self.said.read_text())
            if found:
                return found[1]
            self.wait(50)
        raise RuntimeError("Firefox does not listen")

    def _ask(self, method, **given):
        answer = self.socket.send_cmd(method, given)
        if answer["type"] != "success" and answer["error"] in GONE:
            raise GoneError(answer["message"])
        if answer["type"] != "success":
            raise RuntimeError(f"{method}: {answer['error']} {answer['message']}")
        return answer["result"]

    def _at(self, method, **given):
        return self._ask(method, context=self.context, **given)

    def open(self, url):
        self._at("browsingContext.navigate", url=url, wait="complete")

    def reload(self):
        self._at("browsingContext.reload", wait="complete")

    def run(self, function, *args):
        # As text: BiDi's own form of values is long.
        text = (
            f"async (args) => JSON.stringify(await ({function})(...JSON.parse(args)))"
        )
        value = self._call(text, {"type": "string", "value": json.dumps(args)})
        return json.loads(value["value"]) if "value" in value else None

    def _call(self, function, *args):
        answer = self._ask(
            "script.callFunction",
            functionDeclaration=function,
            arguments=list(args),
            awaitPromise=True,
            target={"context": self.context},
        )
        if answer["type"] == "exception":
            raise RuntimeError(answer["exceptionDetails"]["text"])
        return answer["result"]

    def press(self, x, y):
        # Where it lies by then: the clocks on the page may have moved it meanwhile.
        aim = self._call("() => window.aimedAt")
        origin = {"type": "element", "element": {"sharedId": aim["sharedId"]}}
        finger = [
            {"type": "pointerMove", "x": 0, "y": 0, "origin": origin},
            {"type": "pointerDown", "button": 0},
            {"type": "pointerUp", "button": 0},
        ]
        self._act("pointer", finger, parameters={"pointerType": "touch"})

    def key(self, letter):
        presses = [
            {"type": "keyDown", "value": letter},
            {"type": "keyUp", "value": letter},
        ]
        self._act("key", presses)

    def _act(self, kind, actions, **more):
        source = {"type": kind, "id": kind, "actions": actions, **more}
        self._at("input.performActions", actions=[source])

    def close(self):
        self.socket.close()
        self.process.kill()
        self.process.wait()
