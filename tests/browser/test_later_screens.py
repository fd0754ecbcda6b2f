"""The screens that come after the page: there without a network, or waited for."""

import pytest

from tests.browser.conftest import Creamery

NO_WORKER = "delete Navigator.prototype.serviceWorker"  # as over plain http
LATER = "**/lib/page-later-*.js"
MISSING = "This screen is not on this phone yet."


@pytest.fixture
def creamery(tmp_path, packed_program):
    server = Creamery(tmp_path, packed_program)
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


def test_a_phone_with_no_network_has_the_screens_that_come_later(creamery, new_phone):
    phone = new_phone(paired=False)
    join(phone, creamery.invite("Mara", "maker"))
    page = phone.page
    show(page, "device", "Opens with no network")
    page.locator("li:has-text('Opens with no network'):has-text('yes')").wait_for()
    phone.context.set_offline(True)
    page.reload()
    show(page, "sums", "Wash")
    show(page, "alarms", "Where it can ring")
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
