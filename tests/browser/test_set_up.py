"""A phone that trusts nothing yet finds its way in; one that cannot is told why."""

import itertools

import pytest
from axe_playwright_python.sync_playwright import Axe

from tests.browser.conftest import (
    FLAGS,
    WAIT_S,
    Creamery,
    chromium,
    press_when_seen,
    until,
)
from tests.browser.set_up import HOST, RULES, Room
from tests.browser.test_axe import RULES as AXE_RULES

SIZES = [(320, 568), (412, 839), (839, 412), (768, 1024), (1280, 800)]
LANGUAGES = ["en", "es", "fr"]
# The way through each phone's steps, and the button that leads on from each.
STEPS = {
    "Pixel 7": [("take", ".second"), ("install", ".primary")],
    "iPhone 14": [("take", ".second"), ("profile", ".primary"), ("trust", ".primary")],
}
CODE = "K7QM-3XHD"


@pytest.fixture
def room(tmp_path):
    made = Room(tmp_path)
    yield made
    made.close()


@pytest.fixture
def visit(play, tmp_path):
    """Return a maker of a phone's page; all end without a page error."""
    opened, problems = [], []

    def go(url, device="Pixel 7", language="en", flags=(), scripts=()):
        looks = dict(play.devices[device])
        looks.pop("default_browser_type")
        context = play.chromium.launch_persistent_context(
            str(tmp_path / f"profile-{len(opened)}"),
            executable_path=chromium(),
            args=[*FLAGS, RULES, *flags],
            locale=language,
            **looks,
        )
        opened.append(context)
        context.set_default_timeout(WAIT_S * 1000)
        for script in scripts:
            context.add_init_script(script)
        page = context.pages[0]
        page.on("pageerror", lambda error: problems.append(str(error)))
        page.on("console", lambda said: hear(said.text))
        page.goto(url)
        return page

    def hear(text):
        if "Content Security Policy" in text or "Trusted" in text:
            problems.append(text)

    yield go
    for context in opened:
        context.close()
    assert problems == []


def screen(page, name):
    page.locator(f"[data-screen={name}]").wait_for()


def trusting(room):
    return [f"--ignore-certificate-errors-spki-list={room.certificate.spki}"]


def fits(page):
    """Return at which sizes something stands beyond the screen's edge."""
    wide = []
    for width, height in SIZES:
        page.set_viewport_size({"width": width, "height": height})
        if page.evaluate("document.documentElement.scrollWidth") > width:
            wide.append((width, height))
    return wide


def violations(page):
    found = Axe().run(page, options=AXE_RULES).response["violations"]
    return [(one["id"], [node["html"] for node in one["nodes"]]) for one in found]


def cut_off(page):
    """Return the drawn words that do not stay within their picture."""
    return page.evaluate(
        """() => [...document.querySelectorAll(".picture")].flatMap((picture) => {
          const all = [...picture.querySelectorAll("circle")];
          const rings = all.map((one) => one.getBBox());
          const edge = picture.viewBox.baseVal.width - 8;
          return [...picture.querySelectorAll("text")].filter((one) => {
            const at = one.getBBox(), end = at.x + at.width;
            return end > edge || rings.some((ring) =>
              ring.x < end && ring.x + ring.width > at.x &&
              ring.y < at.y + at.height && ring.y + ring.height > at.y);
          }).map((one) => one.textContent);
        })"""
    )


@pytest.mark.everyday
def test_a_phone_that_trusts_nothing_is_led_through_the_steps(room, visit):
    page = visit(room.url + "#" + CODE)
    screen(page, "take")
    shown = page.locator(".signs").inner_text().replace("\n", " ").replace(" ", ":")
    assert shown == room.facts().root_sha256
    with page.expect_download() as download:
        page.locator(".foot .primary").click()
    assert download.value.suggested_filename == "vatside-root.crt"
    assert room.certificate.der == download.value.path().read_bytes()
    screen(page, "install")
    page.locator(".foot .primary").click()
    page.locator(".notice").wait_for()
    assert "does not trust" in page.locator(".notice").inner_text()


def test_an_iphone_takes_a_profile(room, visit):
    page = visit(room.url, "iPhone 14")
    screen(page, "take")
    with page.expect_download() as download:
        page.locator(".foot .primary").click()
    assert download.value.suggested_filename == "vatside-root.mobileconfig"
    screen(page, "profile")


def test_a_phone_that_trusts_the_server_has_one_button_on_with_the_code(room, visit):
    page = visit(room.url + "#" + CODE, flags=trusting(room))
    screen(page, "open")
    on = page.locator(".foot a")
    assert on.count() == 1
    assert on.get_attribute("href") == f"{room.urls[0]}/setup?lang=en#{CODE}"


def test_an_address_that_is_not_found_gives_way_to_the_next(room, visit):
    room.urls = ("https://vat.absent.test", *room.urls)
    page = visit(room.url, flags=trusting(room))
    screen(page, "open")
    assert page.locator(".foot a").get_attribute("href").startswith(room.urls[1])


def test_a_phone_that_finds_no_secure_address_is_told_which_ones(room, visit):
    room.urls = ("https://vat.absent.test", "https://other.absent.test:8443")
    page = visit(room.url)
    screen(page, "lost")
    assert page.locator(".address").all_inner_texts() == list(room.urls)


def test_a_server_that_falls_silent_is_told_apart(room, visit):
    page = visit(room.url)
    screen(page, "take")
    page.locator(".foot .second").click()
    screen(page, "install")
    room.stop(room.page)
    page.locator(".foot .primary").click()
    screen(page, "silent")


def test_a_phone_with_a_wrong_clock_is_told_before_it_is_led_astray(room, visit):
    behind = "Date.now = ((real) => () => real() - 40 * 86400000)(Date.now);"
    page = visit(room.url, scripts=[behind])
    screen(page, "clock")
    phone, server = page.locator(".pair b").all_inner_texts()
    assert phone != server
    page.locator(".foot .second").click()
    screen(page, "take")


def test_who_comes_back_trusting_goes_on_by_itself_with_the_code(room, visit):
    page = visit(room.url + "#" + CODE)
    screen(page, "take")
    page.locator(".foot .second").click()
    screen(page, "install")
    # What a phone's settings do cannot be done here: from now on it is trusted.
    page.context.route(f"{room.urls[0]}/**", lambda route: route.fulfill(body="there"))
    page.evaluate("document.dispatchEvent(new Event('visibilitychange'))")
    page.wait_for_url(f"{room.urls[0]}/setup?lang=en#{CODE}")


def test_the_language_and_the_phone_can_be_changed(room, visit):
    page = visit(room.url, language="fr-CA")
    screen(page, "take")
    assert page.locator("h1").inner_text() == "1. Prendre le certificat"
    page.get_by_role("button", name="Español").click()
    page.get_by_role("button", name="iPhone").click()
    assert page.locator("h1").inner_text() == "1. Tomar el perfil"
    assert page.evaluate("document.documentElement.lang") == "es"


def test_a_computer_is_asked_which_phone_it_stands_for(room, visit):
    page = visit(room.url, "Desktop Chrome")
    screen(page, "which")
    page.get_by_role("button", name="Android").click()
    screen(page, "take")


@pytest.mark.parametrize(
    ("device", "language"), list(itertools.product(STEPS, LANGUAGES)), ids=str
)
def test_every_step_fits_every_screen_and_is_clean(room, visit, device, language):
    page = visit(room.url, device, language)
    for name, on in STEPS[device]:
        screen(page, name)
        assert fits(page) == [], name
        assert cut_off(page) == [], name
        for scheme in ("light", "dark"):
            page.emulate_media(color_scheme=scheme)
            assert violations(page) == [], (name, scheme)
        page.locator(f".foot {on}").click()


@pytest.fixture
def new_creamery(tmp_path, program, ready):
    """A server that runs and has no owner yet."""
    server = Creamery(tmp_path / "new", program, ready)
    server.folder.mkdir()
    try:
        server.start()
        yield server
    finally:
        server.kill()


def need(page, key, state):
    page.locator(f"[data-need={key}][data-state={state}]").wait_for()


@pytest.mark.everyday
def test_the_self_check_shows_what_is_good_and_joins(creamery, visit):
    code = creamery.invite("Mara", "helper")
    page = visit(f"{creamery.url}/setup?lang=es#/pair/{code}")
    for key in ("secure", "worker", "clock"):
        need(page, key, "good")
    page.get_by_role("button", name="Tocar el tono").click()
    need(page, "sound", "try")
    page.get_by_role("button", name="Lo oí").click()
    need(page, "sound", "good")
    assert page.locator("#field-code").input_value() == code
    assert fits(page) == []
    assert violations(page) == []
    page.locator(".foot .primary").click()
    page.wait_for_url("**/#/now")
    page.locator("#app > .app").wait_for()
    assert page.evaluate("document.documentElement.lang") == "es"
    assert code not in page.url


@pytest.fixture
def answering_to_host(monkeypatch):
    monkeypatch.setenv("VATSIDE_HOSTS", HOST)


def test_the_self_check_says_in_red_what_is_missing(
    answering_to_host, new_creamery, visit
):
    hour = "Date.now = ((real) => () => real() + 3600000)(Date.now);"
    page = visit(f"http://{HOST}:{new_creamery.port}/setup", scripts=[hour])
    for key in ("secure", "worker", "kept", "clock", "alarms"):
        need(page, key, "bad")
    said = page.locator("[data-need=clock] p").inner_text()
    assert "60 min off" in said
    page.get_by_role("button", name="Play the tone").click()
    page.get_by_role("button", name="Heard nothing").click()
    need(page, "sound", "bad")


@pytest.mark.everyday
def test_a_wrong_code_is_told_beside_the_field_in_sight(creamery, visit):
    page = visit(f"{creamery.url}/setup#WRONG-CODE")
    need(page, "worker", "good")
    page.locator(".foot .primary").click()
    page.locator(".fault").wait_for()
    assert "wrong, used up or too old" in page.locator(".fault").inner_text()
    assert in_sight(page, ".fault")
    assert page.evaluate("document.activeElement.id") == "field-code"


def in_sight(page, selector):
    """Tell whether an element is between the screen's top and the foot's buttons."""
    box = page.locator(selector).bounding_box()
    foot = page.locator(".foot").bounding_box()
    return box["y"] >= 0 and box["y"] + box["height"] <= foot["y"]


def test_an_iphone_is_led_to_its_home_screen_with_the_code_unspent(creamery, visit):
    code = creamery.invite("Mara", "helper")
    in_tab = "Object.defineProperty(navigator, 'standalone', {value: false});"
    page = visit(f"{creamery.url}/setup#{code}", "iPhone 14", scripts=[in_tab])
    need(page, "alarms", "bad")
    assert page.locator(".code").inner_text() == code
    assert fits(page) == []
    assert cut_off(page) == []
    assert violations(page) == []
    page.get_by_role("button", name="all the same").click()
    page.locator(".foot .primary").click()
    page.wait_for_url("**/#/now")


def test_the_owners_code_asks_for_a_name_on_the_self_check(new_creamery, visit):
    code = new_creamery.words.read_text().split("code ")[1].split()[0]
    page = visit(f"{new_creamery.url}/setup#{code}")
    page.locator(".foot .primary").click()
    assert "Type your name" in page.locator(".fault").inner_text()
    assert in_sight(page, ".fault")
    page.locator("#field-name").fill("Orla")
    page.locator(".foot .primary").click()
    page.wait_for_url("**/#/now")


def press_large_button(page):
    """Press the large button; again where it had moved and asks for another look."""
    button = page.locator(".foot .primary")
    button.wait_for()
    press_when_seen(page, button.click)


@pytest.mark.parametrize("size", [(412, 839), (320, 568)], ids=str)
def test_joining_in_the_app_says_what_is_wrong_in_sight(new_creamery, visit, size):
    code = new_creamery.words.read_text().split("code ")[1].split()[0]
    page = visit(f"{new_creamery.url}/#/pair/{code}")
    page.set_viewport_size({"width": size[0], "height": size[1]})
    press_large_button(page)
    fault = page.locator(".field-problem")
    fault.wait_for()
    assert fault.inner_text() == "Type your name: this code makes you the owner."
    until(lambda: in_sight(page, ".field-problem"), "the fault to be in sight")
    page.locator(".field", has=fault).locator("input").press_sequentially(
        "Orla", delay=120
    )
    press_large_button(page)
    # Within one document, which the browser's driver does not tell of.
    until(lambda: page.evaluate("location.hash") == "#/now", "the app")


def test_a_phone_that_has_joined_is_told_so_and_led_to_the_app(creamery, new_phone):
    phone = new_phone()
    phone.kept_offline()
    phone.page.goto(f"{creamery.url}/#/device")
    row = phone.page.locator(".row", has_text="Check this phone")
    row.tap()
    phone.page.get_by_text("It belongs to Mara.").wait_for()
    phone.page.locator(".foot .primary").click()
    phone.page.wait_for_url("**/#/now")
