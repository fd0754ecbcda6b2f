"""The screens that come after the page: there without a network, or waited for."""

import pytest

from tests.bench.phone import long_make, push
from tests.browser.conftest import Creamery, until

NO_WORKER = "delete Navigator.prototype.serviceWorker"  # as over plain http
LATER = "**/lib/page-later-*.js"
STYLE = "**/lib/later.css"
DISPLAY = "css => getComputedStyle(document.querySelector(css)).display"
RECIPES = """
  new Promise((resolve) => {
    const asked = indexedDB.open("vatside");
    asked.onsuccess = () => {
      const store = asked.result.transaction("saved").objectStore("saved");
      store.get("recipes").onsuccess = ({ target }) => {
        asked.result.close();
        resolve(Boolean(target.result));
      };
    };
  })
"""
MISSING = "This screen is not on this phone yet."


@pytest.fixture
def creamery(tmp_path, packed_program, packed_ready):
    server = Creamery(tmp_path, packed_program, packed_ready)
    try:
        server.start()
        server.own()
        yield server
    finally:
        server.kill()


def join(phone, code):
    page = phone.page
    page.goto(f"{phone.url}/#/pair/{code}")
    page.locator("input").nth(1).fill("Bench phone")
    page.locator(".primary:not([data-new])").tap()
    page.wait_for_url("**/#/now")


def show(page, route, words):
    page.evaluate("route => { location.hash = route }", "#/" + route)
    page.locator("main").get_by_text(words).first.wait_for()


@pytest.mark.everyday
def test_a_phone_with_no_network_has_the_screens_that_come_later(creamery, new_phone):
    phone = new_phone(paired=False, keeps=True)
    join(phone, creamery.invite("Mara", "maker"))
    page = phone.page
    show(page, "device", "Opens with no network")
    page.locator("li:has-text('Opens with no network'):has-text('yes')").wait_for()
    until(lambda: page.evaluate(RECIPES), "the recipes to be on the phone")
    phone.context.set_offline(True)
    page.reload()
    show(page, "sums", "Wash")
    show(page, "alarms", "Where it can ring")
    assert page.evaluate(DISPLAY, ".rungs") == "grid"
    show(page, "recipes", "Washed")
    # Their texts have come with them: no key and no blank stands there.
    assert "rung." not in page.locator("main").inner_text()


def test_a_screen_that_has_not_come_says_so_and_comes_by_itself(creamery, new_phone):
    phone = new_phone(paired=False, scripts=[NO_WORKER])
    phone.page.route(LATER, lambda route: route.abort())
    join(phone, creamery.invite("Mara", "maker"))
    show(phone.page, "sums", MISSING)
    phone.page.get_by_role("button", name="Load the app again").wait_for()
    phone.page.unroute(LATER)
    phone.page.get_by_text(MISSING).wait_for(state="detached")
    show(phone.page, "sums", "Wash")
    phone.problems.clear()  # the browser's word on the request that was held back


def load_anew(phone):
    """Load the page as for the first time: it has fetched all parts in quiet time."""
    phone.page.goto("about:blank")
    cdp = phone.context.new_cdp_session(phone.page)
    cdp.send("Network.clearBrowserCache")
    cdp.detach()
    phone.page.goto(phone.url)
    phone.painted()


def test_no_later_screen_is_painted_before_its_rules_are_there(creamery, new_phone):
    phone = new_phone(paired=False, scripts=[NO_WORKER])
    page, held = phone.page, []
    page.route(STYLE, lambda route: held.append(route))
    load_anew(phone)
    join(phone, creamery.invite("Mara", "maker"))
    show(page, "alarms", "One moment.")
    until(lambda: held, "the rules to be asked for")
    assert not page.locator(".rungs").count()
    for route in held:
        route.continue_()
    page.locator(".rungs").wait_for()
    assert page.evaluate(DISPLAY, ".rungs") == "grid"


def open_make(creamery):
    """Open a make at the owner's desk; return its id."""
    recipe = creamery.ask("GET", "/recipes/washed-wheel")
    me = creamery.ask("GET", "/me")
    make, events = long_make(recipe, me["person"]["id"], me["device"], 0)
    push(creamery, events[:1])
    return make


def show_make(page, make):
    page.evaluate("make => { location.hash = '#/make/' + make }", make)
    page.locator(".step-card").wait_for()


def test_a_sheet_tapped_before_its_part_has_come_opens_with_it(creamery, new_phone):
    phone = new_phone(paired=False, scripts=[NO_WORKER])
    page, held = phone.page, []
    make = open_make(creamery)
    page.route(LATER, lambda route: held.append(route))
    load_anew(phone)
    join(phone, creamery.invite("Mara", "maker"))
    show_make(page, make)
    page.locator("button:not([data-new])", has_text="Write a note").tap()
    page.get_by_text("One moment.").wait_for()
    page.get_by_role("button", name="Back").wait_for()
    until(lambda: held, "the part to be asked for")
    for route in held:
        route.continue_()
    page.get_by_label("What should the record say?").wait_for()


def test_a_sheet_that_no_network_brings_says_so_and_leads_back(creamery, new_phone):
    phone = new_phone(paired=False, scripts=[NO_WORKER])
    page, make = phone.page, open_make(creamery)
    page.route(LATER, lambda route: route.abort())
    page.reload()
    join(phone, creamery.invite("Mara", "maker"))
    show_make(page, make)
    phone.context.set_offline(True)
    page.locator("button:not([data-new])", has_text="Write a note").tap()
    page.get_by_text(MISSING).wait_for()
    page.locator("button:not([data-new])", has_text="Back").tap()
    page.locator(".step-card").wait_for()
    phone.problems.clear()  # the browser's word on the request that was held back
