"""A read-only link from the owner's phone to a guest's browser, and back."""

import pytest
from axe_playwright_python.sync_playwright import Axe

from tests.browser.conftest import until
from tests.browser.test_screens import AXE, TOO_WIDE, problems_of_layout, show


@pytest.fixture
def room(new_phone):
    """The owner's phone and a make with a reading of a maker in it."""
    maker = new_phone("Maren Okello")
    make = maker.open_make(name="Evening make")
    maker.record("step_begun", make=make, data={"step": "heat"})
    data = {"quantity": "milk_temp_c", "value": 31.5, "step": "heat"}
    maker.record("reading_taken", make=make, data=data)
    maker.record("note_added", make=make, data={"text": "Maren tasted the milk"})
    maker.sent()
    owner = new_phone("Asta Quern", "owner")
    owner.until("state.board.value?.makes.length === 1", "the make to be known")
    return owner, make


def make_link(owner):
    """Make a link as the owner would; return its address."""
    page = owner.page
    show(owner, "people")
    page.get_by_text("Make a read-only link").tap()
    page.wait_for_timeout(400)
    page.locator("input").fill("Town vet")
    page.locator(".choice", has_text="Evening make").tap()
    page.wait_for_timeout(400)
    page.locator(".primary").tap()
    return page.locator(".link-address").inner_text()


@pytest.fixture
def guest(play, new_phone):
    """A browser that is no phone of the creamery."""
    return new_phone(paired=False)


def test_a_guest_sees_the_make_by_role_and_the_secret_leaves_the_address(room, guest):
    owner, _ = room
    address = make_link(owner)
    page = guest.page
    page.goto(address)
    page.reload()
    page.locator(".card").wait_for()
    assert page.url == guest.url + "/#/guest"
    page.locator(".card").tap()
    page.locator(".curve-chart canvas").first.wait_for()
    words = page.locator("body").inner_text().replace("\u00a0", " ")
    assert "Milk temperature 31.5 °C" in words
    assert "[maker] tasted the milk" in words
    for name in ("Maren", "Okello", "Asta"):
        assert name not in words
    assert page.locator("input, textarea, .primary, .status").count() == 0


def test_a_link_taken_back_closes_with_clear_words(room, guest):
    owner, _ = room
    guest.page.goto(make_link(owner))
    guest.page.reload()
    guest.page.locator(".card").wait_for()
    owner.page.get_by_role("button", name="Back").tap()
    owner.page.get_by_role("button", name="Revoke").tap()
    owner.page.wait_for_timeout(400)
    owner.page.get_by_role("button", name="Yes, revoke").tap()
    owner.page.get_by_text("revoked").wait_for()
    guest.page.reload()
    guest.page.get_by_text("The creamery revoked this link").wait_for()
    assert guest.page.locator(".card").count() == 0


def test_a_wrong_address_says_what_to_do(room, guest):
    guest.page.goto(guest.url + "/#/guest/" + "x" * 43)
    guest.page.reload()
    guest.page.get_by_text("Ask the creamery for a new one").wait_for()


def test_a_guests_page_asks_for_neither_core_nor_log(room, guest):
    owner, _ = room
    address = make_link(owner)
    asked = []
    guest.page.goto("about:blank")
    guest.page.on("request", lambda one: asked.append(one.url))
    guest.page.goto(address)
    guest.page.locator(".card").wait_for()
    guest.page.wait_for_timeout(1000)
    for part in ("core.json", "micropython", "v1/sync", "v1/me", "v1/live"):
        assert [url for url in asked if part in url] == [], part


@pytest.mark.parametrize(("wide", "high"), [(360, 740), (820, 1180)])
def test_form_and_guests_page_keep_sizes_gaps_and_contrast(room, guest, wide, high):
    owner, make = room
    for phone in (owner, guest):
        phone.page.set_viewport_size({"width": wide, "height": high})
    show(owner, "people")
    owner.page.get_by_text("Make a read-only link").tap()
    owner.page.locator(".choice").first.wait_for()
    owner.page.wait_for_timeout(400)
    assert problems_of_layout(owner.page, wide, high) == []
    result = Axe().run(owner.page, options=AXE)
    assert result.violations_count == 0, result.generate_report()
    guest.page.goto(make_link(owner))
    guest.page.reload()
    guest.page.locator(".card").wait_for()
    for address in ("guest", f"guest/make/{make}"):
        guest.page.evaluate("(to) => { location.hash = '#/' + to; }", address)
        until(lambda: guest.page.locator(".card, .curve-table").count(), address)
        guest.page.wait_for_timeout(500)
        assert problems_of_layout(guest.page, wide, high) == []
        assert guest.page.evaluate(TOO_WIDE) == []
        result = Axe().run(guest.page, options=AXE)
        assert result.violations_count == 0, result.generate_report()
