"""The first picture of who watches from elsewhere: before the page, then with it."""

import re

import pytest
from axe_playwright_python.sync_playwright import Axe

from tests.browser.conftest import until
from tests.browser.test_screens import AXE, TOO_WIDE, problems_of_layout

FORGET_WORKER = """
async () => {
  const all = await navigator.serviceWorker.getRegistrations();
  await Promise.all(all.map((one) => one.unregister()));
}
"""
LOG = "**/api/v1/sync/pull*"  # not js/data/sync/pull.js, the module that asks for it


@pytest.fixture
def room(new_phone):
    """A maker's phone with a make just begun."""
    maker = new_phone()
    make = maker.open_make(name="Evening make", batch="QB-7")
    maker.record("step_begun", make=make, data={"step": "receive"})
    maker.sent()
    return maker


@pytest.fixture
def owner(room, new_phone):
    return new_phone("Olga", "owner")


def plain(text):
    return text.replace("\u00a0", " ")


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_makes_are_painted_while_the_page_is_still_on_its_way(owner, scheme):
    page = owner.page
    page.emulate_media(color_scheme=scheme)
    page.evaluate(FORGET_WORKER)  # it would hand out what it keeps
    page.route("**/js/app.js", lambda route: None)  # it never comes
    page.goto("about:blank")
    page.goto(owner.url + "/#/live", wait_until="commit")
    page.locator(".live-card").wait_for()
    words = plain(page.locator("body").inner_text())
    for text in ("Evening make", "Batch QB-7", "Receive the milk", "Day ends about"):
        assert text in words
    assert re.search(r"As the server sees it at \d\d:\d\d", words)
    assert page.evaluate(TOO_WIDE) == []
    result = Axe().run(page, options=AXE)
    assert result.violations_count == 0, result.generate_report()
    page.unroute("**/js/app.js")


def test_where_the_page_does_not_come_the_phone_says_so_and_loads_it_again(new_phone):
    phone = new_phone()
    page = phone.page
    page.evaluate(FORGET_WORKER)  # it would hand out what it keeps
    page.clock.install()
    page.route("**/js/app.js", lambda route: route.abort())
    page.goto("about:blank")
    page.goto(phone.url)
    assert page.locator("body").inner_text() == "Vatside"
    page.clock.fast_forward(20_000)
    page.get_by_role("alert").wait_for()
    assert "has not opened yet" in page.get_by_role("alert").inner_text()
    assert problems_of_layout(page, 412, 839) == []
    page.unroute("**/js/app.js")
    page.get_by_role("button", name="Load the app again").tap()
    phone.painted()
    assert page.get_by_role("alert").count() == 0


def test_the_page_takes_the_same_answer_over(owner):
    page = owner.page
    asked = []
    page.on("request", lambda one: "open=true" in one.url and asked.append(one.url))
    page.goto("about:blank")
    page.goto(owner.url + "/#/live")
    page.locator(".app .live-card").wait_for()
    page.wait_for_timeout(500)
    assert len(asked) == 1
    assert page.locator(".live-card").count() == 1


def test_the_picture_stands_until_its_screen_has_come(owner):
    page, held = owner.page, []
    page.evaluate(FORGET_WORKER)  # it would hand out what it keeps
    page.route("**/js/screens/later.js", lambda route: held.append(route))
    page.goto("about:blank")
    page.goto(owner.url + "/#/live", wait_until="commit")
    page.locator(".live-card").wait_for()
    until(lambda: held, "the screen to be asked for")
    assert page.locator(".app").count() == 0
    assert page.locator(".live-card").count() == 1
    held[0].continue_()
    page.locator(".app .live-card").wait_for()


def test_the_picture_stands_until_the_phones_own_log_has_caught_up(
    creamery, room, new_phone
):
    phone = new_phone(paired=False)
    page = phone.page
    held = []
    page.route(LOG, lambda route: held.append(route))
    phone.pair(creamery.invite("Olga", "owner"))
    page.goto("about:blank")
    page.goto(phone.url + "/#/live", wait_until="commit")
    card = page.locator(".app .live-card")
    card.wait_for()
    until(lambda: held, "the log to be asked for")
    assert "AS THE SERVER SEES IT" in page.locator(".live-word").inner_text()
    assert "Receive the milk" in card.inner_text()
    assert phone.run("return (await db.place()).cursor") == 0
    page.unroute(LOG)
    page.reload()
    word = page.locator(".live-word")
    until(lambda: "LIVE" in word.inner_text(), "the log to have caught up", 60)
    assert "Receive the milk" in card.inner_text()


def test_no_other_place_asks_for_the_picture(owner):
    page = owner.page
    asked = []
    page.on("request", lambda one: "open=true" in one.url and asked.append(one.url))
    page.goto("about:blank")
    page.goto(owner.url + "/#/now")
    owner.painted()
    page.wait_for_timeout(500)
    assert asked == []


def test_each_phone_of_the_room_tells_when_it_was_heard(owner):
    owner.page.goto("about:blank")
    owner.page.goto(owner.url + "/#/live")
    line = owner.page.locator(".facts li", has_text="Mara")
    line.wait_for()
    assert re.search(r"heard \d+ (s|min) ago", plain(line.inner_text()))
