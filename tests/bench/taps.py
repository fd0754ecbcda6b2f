"""Count the taps, words and first lines of a whole make on a phone.

A scripted maker (tests/browser/maker.py) taps a whole make of the washed wheel on the
packed page, as it is installed, and does what the screen asks for when it asks. The
page's own second for what is new and its bounces are kept; only the phone's clock is
moved on between the taps. The phone is offline from the opening on, so that nothing
else tells the time. The instruments show what the make is to come to, as in the make
that was counted by hand; with --moving they follow `shown_by`: milk that is heated
warms, the rest wavers by a tenth. Where the pad offers the figure that the instrument
shows, the maker taps that.

Use: python -m tests.bench.taps [--moving] [--log FILE]
"""

import argparse
import re
import statistics
import tempfile
from pathlib import Path

from playwright.sync_api import sync_playwright

from tests.bench import flows
from tests.bench.table import Row, print_table
from tests.bench.tapper import RECIPE, TITLES, Counted, CountedMaker
from tests.browser.conftest import Creamery, Phone, copy_unpacked, pack, until

STORE = "store"


def all_sent(page):
    words = page.locator(".status-words").inner_text()
    return "Connected" in words and "All entries sent" in words


def ready_for_no_network(page, maker):
    """Wait until the phone opens with no network, and come back to the make."""
    maker.hand.tap(".status-button[aria-label=Menu]")
    maker.hand.tap(".row", having="This phone")
    is_ready = "li:has-text('Opens with no network'):has-text('yes')"
    until(
        lambda: maker.hand.pass_s(1.0) or page.locator(is_ready).count(), "no network"
    )
    page.go_back()
    page.go_back()
    until(lambda: maker.hand.pass_s(0.2) or maker.hand.count(".foot .primary"), "make")


def program_in(folder):
    """Return a copy of the program with the page packed, as it is installed."""
    copy_unpacked(folder, "server", "static", "deploy")
    pack(folder)
    return folder


def whole_make(creamery, play, folder, given):
    """Tap a whole make; print what it took."""
    link = f"{creamery.url}/#/pair/{creamery.invite('Mara', 'maker')}"
    phone = Phone(play, folder / "maker", link)
    phone.open()
    hand = Counted(phone.page, given.log)
    maker = CountedMaker(hand, given.moving)
    try:
        with hand.doing("opening"):
            maker.join()
            maker.open_make(RECIPE["title"]["en"], small=13)
        until(lambda: hand.pass_s(2.0) or all_sent(phone.page), "all entries sent")
        with hand.doing("not counted"):
            ready_for_no_network(phone.page, maker)
        phone.context.set_offline(True)
        hand.move_clock()
        maker.work()
        hand.taps.pop("not counted")
    finally:
        if given.log:
            phone.page.screenshot(path=f"{given.log}.png")
        phone.close()
        print_make(maker)


def print_make(maker):
    taps = maker.hand.taps
    store = maker.marks.get(next(t for t, key in TITLES.items() if key == STORE))
    rows = [
        Row("taps of the whole make", taps.total(), "", 350),
        Row("of them up to the store", store or 0, "", 200),
    ]
    rows += [Row(f"of them {what}", n, "", None) for what, n in taps.most_common()]
    rows.append(Row("readings", maker.done["reading_taken"], "", None))
    words = [one["words"] for one in maker.first.values()]
    tops = [one["top"] for one in maker.first.values() if one["top"] is not None]
    if words and tops:
        rows.append(
            Row("words in the first screenful", statistics.median(words), "", 40)
        )
        rows.append(
            Row("first line of what to do", statistics.median(tops), "px", None)
        )
    print_table("A whole make of the washed wheel", rows)


FLOWS = (
    ("owner's link to the first step", flows.owner, 15),
    ("helper, a shared phone, press timer", flows.helper, 3),
    ("three wheels of a size weighed", flows.weights, 12),
)


class Bench(Creamery):
    """A server of its own for each flow that begins at nothing."""

    def code(self):
        """Return the owner's code that it printed at its start."""
        return re.search(r"code (\S+)", self.words.read_text())[1]


def few_taps(play, folder):
    """Tap the short flows, each in a creamery of its own; print what they took."""
    program = folder / "unpacked"
    copy_unpacked(program, "server", "static")
    rows = []
    for n, (name, flow, asked) in enumerate(FLOWS):
        place = folder / f"flow-{n}"
        place.mkdir()
        server = Bench(place, program)
        try:
            server.start()
            if flow is not flows.owner:
                server.own()
            rows.append(Row(name, flow(server, play, place), "", asked))
        finally:
            server.kill()
    print_table("Short flows", rows)


def main():
    asked = argparse.ArgumentParser(description=__doc__)
    asked.add_argument("--only", choices=("make", "flows"))
    asked.add_argument("--log", type=Path, help="where each tap is written")
    asked.add_argument("--moving", action="store_true")
    given = asked.parse_args()
    with tempfile.TemporaryDirectory() as scratch, sync_playwright() as play:
        folder = Path(scratch)
        if given.only != "make":
            few_taps(play, folder)
        if given.only == "flows":
            return
        server = Creamery(folder, program_in(folder / "program"))
        try:
            server.start()
            server.own()
            whole_make(server, play, folder, given)
        finally:
            server.kill()


if __name__ == "__main__":
    main()
