"""How soon and how cheaply an owner elsewhere sees the room.

Not a test: machines differ. It starts a real server with a make of many events,
opens the live view in a real Chromium with a phone's profile behind a slow
link, and follows the stream with many viewers while entries are pushed.

The link is slowed by the browser (CDP Network.emulateNetworkConditions) for the
page; requests of its workers, such as the core's files, are slowed by the same
session only where the browser does so itself.

Use: python -m tests.bench.owner [--events 500] [--viewers 20] [--pushes 30]
"""

import argparse
import gzip
import http.client
import json
import shutil
import statistics
import tempfile
import threading
import time
import urllib.request
import uuid
from pathlib import Path

from playwright.sync_api import sync_playwright

from deploy.pack_page import pack
from tests.bench.phone import join, long_make, push
from tests.bench.table import Row, percentile, print_table
from tests.browser.conftest import ROOT, Creamery, Phone

LATENCY_MS = 400
BYTES_S = 400_000 / 8
CARD = ".live-card"
# When the first card of the live view was handed to the screen.
PICTURE = """
  new MutationObserver((_, observer) => {
    if (!document.querySelector(".live-card")) return;
    observer.disconnect();
    requestAnimationFrame(() => {
      const channel = new MessageChannel();
      channel.port1.onmessage = () => { window.pictureMs = performance.now(); };
      channel.port2.postMessage(0);
    });
  }).observe(document, {subtree: true, childList: true});
"""
# A phone that was paired and has nothing of the log yet.
FORGET_LOG = """async () => {
  const names = (await indexedDB.databases()).map((one) => one.name);
  for (const name of names) {
    const base = await new Promise((done, failed) => {
      const asked = indexedDB.open(name);
      asked.onsuccess = () => done(asked.result);
      asked.onerror = () => failed(asked.error);
    });
    const stores = [...base.objectStoreNames];
    await new Promise((done, failed) => {
      const work = base.transaction(stores, "readwrite");
      work.oncomplete = done;
      work.onerror = () => failed(work.error);
      for (const store of stores) {
        if (store === "log") work.objectStore(store).clear();
        if (store === "saved") work.objectStore(store).delete("board");
        if (store === "meta") work.objectStore(store).delete("cursor");
      }
    });
    base.close();
  }
}"""
FORGET_SHELL = """async () => {
  for (const name of await caches.keys()) await caches.delete(name);
  for (const one of await navigator.serviceWorker.getRegistrations()) {
    await one.unregister();
  }
}"""


def slow_link(phone, page):
    session = phone.context.new_cdp_session(page)
    session.send("Network.enable")
    session.send("Network.clearBrowserCache")
    session.send(
        "Network.emulateNetworkConditions",
        {
            "offline": False,
            "latency": LATENCY_MS,
            "downloadThroughput": BYTES_S,
            "uploadThroughput": BYTES_S,
        },
    )


def first_picture_ms(phone, *, has_shell):
    """Return how long the live view takes to show its first make [ms]."""
    page = phone.context.new_page()
    page.goto(f"{phone.url}/manifest.webmanifest")
    page.evaluate(FORGET_LOG)
    if not has_shell:
        page.evaluate(FORGET_SHELL)
    page.close()
    page = phone.context.new_page()
    page.add_init_script(PICTURE)
    slow_link(phone, page)
    page.goto(f"{phone.url}/#/live", wait_until="commit")
    page.locator(CARD).first.wait_for()
    page.wait_for_function("() => window.pictureMs")
    found = page.evaluate("window.pictureMs")
    page.close()
    return found


def picture_bytes(creamery):
    request = urllib.request.Request(f"{creamery.url}/api/v1/makes?open=true")
    request.add_header("Accept-Encoding", "gzip")
    with creamery.opener.open(request) as answer:
        body = answer.read()
        packed = answer.headers.get("Content-Encoding") == "gzip"
    return len(body), len(gzip.decompress(body) if packed else body)


class Viewer(threading.Thread):
    """One stream that notes when each entry came."""

    def __init__(self, creamery, cookie, after):
        super().__init__(daemon=True)
        self.line = http.client.HTTPConnection("127.0.0.1", creamery.port, timeout=60)
        self.line.request("GET", f"/api/v1/live?after={after}", headers=cookie)
        self.answer = self.line.getresponse()
        self.is_open = self.answer.status == 200
        self.came_s = {}
        self.sizes = []

    def run(self):
        block = b""
        for line in self.answer:
            block += line
            if line != b"\n":
                continue
            if b"\nid: " in b"\n" + block:
                data = block.split(b"data: ", 1)[1]
                self.came_s[json.loads(data)["event"]["id"]] = time.monotonic()
                self.sizes.append(len(block))
            block = b""


def cookie_of(creamery):
    request = urllib.request.Request(f"{creamery.url}/api/v1/me")
    handler = next(one for one in creamery.opener.handlers if hasattr(one, "cookiejar"))
    handler.cookiejar.add_cookie_header(request)
    return {"Cookie": request.get_header("Cookie")}


def deliver(creamery, make, me, viewers, pushes):
    """Return ([delay ms], [bytes of an entry], viewers that were let in)."""
    epoch = creamery.epoch()
    after = len(creamery.events())
    cookie = cookie_of(creamery)
    watching = [Viewer(creamery, cookie, after) for _ in range(viewers)]
    watching = [one for one in watching if one.is_open]
    for one in watching:
        one.start()
    time.sleep(1)
    sent_s = {}
    for place in range(pushes):
        now_ms = time.time_ns() // 1_000_000
        event = {
            "id": str(uuid.uuid4()),
            "make": make,
            "device": me["device"],
            "seq": 1_000_000 + place,
            "person": me["person"]["id"],
            "at_ms": now_ms,
            "entered_ms": now_ms,
            "tz_min": 0,
            "mono_ms": 1.0,
            "boot": str(uuid.uuid4()),
            "off_ms": 0,
            "off_q_ms": 10,
            "kind": "reading_taken",
            "v": 1,
            "ref": None,
            "data": {"quantity": "curd_temp_c", "value": 36.5, "step": "stir_2"},
        }
        body = {"api": 1, "app": "bench", "epoch": epoch, "t0": now_ms}
        creamery.ask("POST", "/sync/push", {**body, "events": [event]})
        sent_s[event["id"]] = time.monotonic()
        time.sleep(0.13)  # no multiple of the server's own half second
    time.sleep(2)
    delays = [
        (one.came_s[key] - sent_s[key]) * 1000
        for one in watching
        for key in sent_s
        if key in one.came_s
    ]
    lost = len(watching) * pushes - len(delays)
    if lost:
        raise RuntimeError(f"{lost} entries did not reach a viewer")
    sizes = [size for one in watching for size in one.sizes]
    return delays, sizes, len(watching)


def main():
    pack()  # what phones load
    words = argparse.ArgumentParser(description=__doc__)
    words.add_argument("--events", type=int, default=500)
    words.add_argument("--viewers", type=int, default=20)
    words.add_argument("--pushes", type=int, default=30)
    words.add_argument("--runs", type=int, default=5)
    args = words.parse_args()
    folder = Path(tempfile.mkdtemp(prefix="vatside-bench-"))
    creamery = Creamery(folder, ROOT)
    try:
        with sync_playwright() as play:
            creamery.start()
            creamery.own()
            measure(play, creamery, folder, args)
    finally:
        creamery.kill()
        shutil.rmtree(folder, ignore_errors=True)


def measure(play, creamery, folder, args):
    recipe = creamery.ask("GET", "/recipes/washed-wheel")
    me = creamery.ask("GET", "/me")
    make, events = long_make(recipe, me["person"]["id"], me["device"], args.events)
    push(creamery, events)
    packed, plain = picture_bytes(creamery)
    phone = Phone(play, folder / "phone", creamery.url)
    phone.open()
    join(phone, creamery.invite("Orla", "owner"))
    phone.page.wait_for_timeout(2000)
    phone.page.goto("about:blank")
    warm = [first_picture_ms(phone, has_shell=True) for _ in range(args.runs)]
    cold = [first_picture_ms(phone, has_shell=False) for _ in range(args.runs)]
    phone.close()
    delays, sizes, seen = deliver(creamery, make, me, args.viewers, args.pushes)
    print_table(
        f"{LATENCY_MS} ms, 400 kbit/s; {len(events)} events; {seen} viewers",
        [
            Row("first picture, app kept, median", statistics.median(warm), "ms", 2000),
            Row("first picture, app kept, worst", max(warm), "ms", None),
            Row("first picture, cold, median", statistics.median(cold), "ms", 2000),
            Row("first picture, cold, worst", max(cold), "ms", None),
            Row("first picture, as sent", packed, "B", None),
            Row("first picture, unpacked", plain, "B", None),
            Row("one entry on the stream, median", statistics.median(sizes), "B", None),
            Row("delivery, median", statistics.median(delays), "ms", None),
            Row("delivery, p95", percentile(delays, 0.95), "ms", 1000),
        ],
    )


if __name__ == "__main__":
    main()
