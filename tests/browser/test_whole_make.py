"""A newcomer's whole make, from the link on a phone to the closed record.

The page is the packed one, as phones load it. Nothing of the page's code is
called: the maker taps what the screen offers. The server's clock is fast, slower
while the milk is held, and faster still from the night on.
"""

import json
from collections import Counter

import pytest

from tests.browser.conftest import ROOT, Creamery, copy_unpacked, pack, until
from tests.browser.hand import PlaywrightHand
from tests.browser.maker import Maker

DAY_RATE = 300  # a second is five minutes
# Of a hold two readings count together within 2 min: here 12 s, time for a round.
HOLD_RATE = 10
STORE_RATE = 3600  # and then an hour
# The second that a new button waits for would be five minutes there, too: here it
# is a tenth of that. The page's clocks stay true, since they tell the server's time.
QUICK_HANDS = {
    "touch-guard.js": ("SETTLE_MS = 1000;", "SETTLE_MS = 100;"),
    "tap.js": ("GUARD_MS = 350;", "GUARD_MS = 35;"),
}
RECIPE = json.loads((ROOT / "server/recipes/washed-wheel.json").read_text("utf-8"))
TITLES = {step["key"]: step["title"]["en"] for step in RECIPE["steps"]}
LONG = ("brine_large", "dry", "coat_1", "coat_2", "store")
WORDS = {"WAITING": "waiting", "READY": "ready", "RUNNING": "running"}
WORDS.update({"DUE": "running", "LATE": "running"})
WORDS.update({"DONE": "ended", "SKIPPED": "skipped"})


@pytest.fixture(scope="module")
def quick_program(tmp_path_factory):
    """The packed program, whose buttons keep up with the server's fast clock."""
    copy = tmp_path_factory.mktemp("quick")
    copy_unpacked(copy, "server", "static", "deploy")
    for name, (whole, short) in QUICK_HANDS.items():
        path = copy / "static" / "js" / "parts" / name
        text = path.read_text("utf-8")
        assert text.count(whole) == 1, name
        path.write_text(text.replace(whole, short), "utf-8")
    pack(copy)
    return copy


@pytest.fixture
def creamery(tmp_path, quick_program):
    """A server with a fast clock, its owner paired."""
    server = Creamery(tmp_path, quick_program)
    server.options = ("--replay", str(DAY_RATE))
    try:
        server.start()
        server.own()
        yield server
    finally:
        server.kill()


@pytest.fixture
def newcomer(creamery, new_phone):
    """A phone that was just shown the link of its code, not yet joined."""
    code = creamery.invite("Mara", "maker")
    link = f"{creamery.url}/#/pair/{code}"
    return new_phone(paired=False, url=link, keeps=True)


def words_on_top(page):
    return page.locator(".status-words").inner_text()


def all_sent(page):
    def is_sent():
        words = words_on_top(page)
        return "Connected" in words and "All entries sent" in words

    until(is_sent, f"all entries to be sent: {words_on_top(page)}", wait_s=60)


def ready_for_no_network(page, maker):
    """Look at what the phone says of itself, and come back to the make."""
    maker.hand.tap(".status-button[aria-label=Menu]")
    maker.hand.tap(".row", having="This phone")
    page.locator("li:has-text('Opens with no network'):has-text('yes')").wait_for()
    page.go_back()
    page.go_back()
    page.locator(".foot .primary").wait_for()


def statuses_shown(page, maker):
    """Read the statuses of all steps off the phone's list, in order."""
    maker.row("The whole day")
    page.locator(".step-row").first.wait_for()
    words = page.locator(".step-row .mark-word").all_text_contents()
    maker.row("‹ Back")
    page.locator(".make").wait_for()
    return [WORDS[word] for word in words]


def statuses_told(creamery, make):
    """Ask the server for the status of each step of the milk's route, in order."""
    steps = creamery.ask("GET", f"/makes/{make}/view")["steps"]
    return {step["key"]: step["status"] for step in steps}


def correct(page, maker, before, after):
    """Put a reading of a finished step right, on the screen of the record."""
    maker.row("Record")
    maker.hand.tap(".row", having=before)
    maker.row("Correct the figure")
    page.locator(".keys").wait_for()
    maker.type(after)
    maker.hand.tap(".foot .primary", "Next: say why")
    maker.choose("Typed wrong")
    # By the hand, which knows whether the page took it: `tap` asks the page whether the
    # button waits, and here it waits shorter than the question takes.
    maker.hand.tap(".foot .primary", having="Save the correction")
    page.get_by_text("Why: Typed wrong").first.wait_for()
    maker.done["entry_corrected"] += 1
    maker.row("‹ Record")
    maker.row("‹ Back")
    page.locator(".make").wait_for()


def close_make(page, maker):
    maker.row("The whole make")
    maker.row("Close the make")
    maker.choose("All steps are done")
    # Held by a finger; by a key, two presses.
    for _ in range(2):
        page.locator(".hold-bar").press("Enter")
    page.get_by_text("This make is closed.").wait_for()
    maker.done["make_closed"] += 1


def check_every_entry_is_there_once(creamery, maker):
    events = creamery.events()
    assert len({event["id"] for event in events}) == len(events)
    assert Counter(event["kind"] for event in events) == maker.done
    assert sorted(event["seq"] for event in events) == list(range(1, len(events) + 1))
    assert creamery.ask("GET", "/needs-look") == []


def power_cut(creamery, page, rate):
    """Let the power fail; the clock runs at another rate from then on."""
    all_sent(page)
    creamery.kill()
    # Else it would go on by the clock of before for a moment: minutes of the day.
    until(lambda: "Connected" not in words_on_top(page), "the cut to be noticed")
    creamery.options = ("--replay", str(rate))
    creamery.start()
    all_sent(page)


def test_a_newcomer_makes_cheese_from_the_link_to_the_closed_record(creamery, newcomer):
    page = newcomer.page
    assert page.locator("script[src='/lib/page.js']").count() == 1
    maker = Maker(PlaywrightHand(page), early=[TITLES[key] for key in LONG])
    maker.join()
    make = maker.open_make(RECIPE["title"]["en"], small=13)
    ready_for_no_network(page, maker)

    maker.work(stop=TITLES["hold"])
    power_cut(creamery, page, HOLD_RATE)
    maker.work(stop=TITLES["mark_chart"])
    power_cut(creamery, page, DAY_RATE)
    maker.work(stop=TITLES["cut"])
    all_sent(page)
    newcomer.context.set_offline(True)
    maker.work(stop=TITLES["wash_1"])
    sent = Counter(event["kind"] for event in creamery.events())
    assert maker.done["step_begun"] > sent["step_begun"]
    newcomer.reload()
    page.locator(".step-title").wait_for()
    assert "All entries sent" not in words_on_top(page)
    until(lambda: "not sent yet" in words_on_top(page), "the entries to be counted")
    correct(page, maker, "6.62", "6.60")
    maker.work(stop=TITLES["to_table"])
    newcomer.context.set_offline(False)
    all_sent(page)
    check_every_entry_is_there_once(creamery, maker)
    shown = statuses_shown(page, maker)
    told = statuses_told(creamery, make)
    assert shown == list(told.values())
    assert shown.count("ended") == list(told).index("to_table")

    maker.work(stop=TITLES["press_2"])
    power_cut(creamery, page, STORE_RATE)
    maker.work()
    close_make(page, maker)
    all_sent(page)
    check_every_entry_is_there_once(creamery, maker)
    check_record(creamery, make)


def check_record(creamery, make):
    told = creamery.ask("GET", f"/makes/{make}/view")
    assert told["make"]["state"] == "closed"
    assert {step["status"] for step in told["steps"]} == {"ended"}
    why = {step["key"]: step["ended"]["why"] for step in told["steps"]}
    early = {key: why for key, why in why.items() if why}
    assert early == dict.fromkeys(LONG, "The maker decided so")
    lines = creamery.ask("GET", f"/makes/{make}/record")
    (line,) = [line for line in lines if line["corrections"]]
    assert line["data"]["value"] == 6.6
    assert line["original"]["data"]["value"] == 6.62
    assert line["corrections"][0]["why"] == "Typed wrong"
    assert line["corrections"][0]["before"] == {"value": 6.62}
    # The rounds met the rule: of the hold nothing was left to decide.
    assert "hold" not in [row["data"].get("matter") for row in lines]
    (rennet,) = [row for row in lines if row["data"].get("ingredient") == "rennet"]
    assert (rennet["data"]["lot"], rennet["data"]["use_by"]) == ("L-204", "2027-03-01")
    moulds = {row["size"]: row for row in told["make"]["moulds"]}
    assert moulds["small"]["moulded"] == 13
    assert moulds["large"]["moulded"] == moulds["large"]["planned"] > 0
