"""Each person reads in their own language and units, also with no network."""

import re

import pytest

from tests.browser.conftest import Creamery, until
from tests.browser.test_screens import TOO_WIDE, read_cautions, show

NB = "\u00a0"
# Text that is cut off, or stands out of the button that holds it.
CUT_OFF = """
() => [...document.querySelectorAll("button")].filter((one) => {
  if (!one.getClientRects().length) return false;
  const box = one.getBoundingClientRect();
  const isOutside = (text) => text.left < box.left - 1 || text.right > box.right + 1
    || text.top < box.top - 1 || text.bottom > box.bottom + 1;
  const words = document.createTreeWalker(one, NodeFilter.SHOW_TEXT);
  const range = document.createRange();
  while (words.nextNode()) {
    // A drawing leaves out the names that it has no room for, and says them all.
    if (words.currentNode.parentElement.closest('[role="img"]')) continue;
    range.selectNodeContents(words.currentNode);
    if ([...range.getClientRects()].some(isOutside)) return true;
  }
  return one.scrollWidth > one.clientWidth + 1;
}).map((one) => one.className + " " + one.textContent.slice(0, 60))
"""
FIRST_WORDS = """
new MutationObserver(() => {
  const app = document.querySelector("#app > .app");
  if (app && !window.firstWords) window.firstWords = app.innerText;
}).observe(document, {childList: true, subtree: true});
"""
SPANISH = "Object.defineProperty(navigator, 'languages', {get: () => ['es-MX', 'en']})"


def lang(page):
    return page.evaluate("document.documentElement.lang")


def in_language(page, code):
    until(lambda: lang(page) == code, f"the page in {code}")


def choose(page, *names):
    """Choose on the screen of words and units, as a person finds it: two taps."""
    page.locator(".status-button").first.tap()
    page.evaluate("document.querySelectorAll('.row').length")
    page.locator(".row", has_text=re.compile("°C")).first.tap()
    for name in names:
        page.get_by_role("button", name=name, exact=True).tap()
        page.wait_for_timeout(500)


@pytest.fixture
def at_reading(new_phone):
    """A maker's phone at its first make, with 31.5 °C recorded, and no network."""
    phone = new_phone(name="Mara")
    make = phone.open_make()
    show(phone, f"make/{make}")
    phone.page.locator(".primary").wait_for()
    read_cautions(phone)
    phone.record("step_begun", make=make, data={"step": "receive"})
    data = {"quantity": "milk_temp_c", "value": 31.5, "typed": "31.5", "typed_unit": ""}
    made = phone.record("reading_taken", make=make, data={**data, "step": "receive"})
    phone.sent()
    phone.kept_offline()
    return phone, make, made


@pytest.mark.everyday
def test_a_person_turns_to_spanish_and_fahrenheit_with_no_network(
    creamery, new_phone, at_reading
):
    phone, make, made = at_reading
    people = [one["name"] for one in creamery.ask("GET", "/people")]
    assert people == ["Orla", "Mara"]
    page = phone.page
    phone.context.set_offline(True)
    choose(page, "Español", "°F")
    in_language(page, "es")
    show(phone, f"make/{make}/reading/receive/milk_temp_c")
    text = page.locator(".keypad").inner_text()
    # By hand: 31.5 °C is 88.7 °F.
    assert f"88,7{NB}°F" in text
    assert "Temperatura de la leche" in text
    assert page.locator(".entered-unit").inner_text() == "°F"
    assert page.locator(".key", has_text=",").count() == 1
    for key in "90,5":
        page.locator(".key", has_text=key).first.tap()
        page.wait_for_timeout(120)
    page.locator(".primary").tap()
    page.locator(".keypad").wait_for(state="detached")
    show(phone, f"make/{make}/record")
    record = page.locator(".screen").inner_text()
    assert f"31,5{NB}°C (88,7{NB}°F)" in record
    assert f"90,5{NB}°F" in record
    kept = phone.run("return await db.everything()")
    assert [one for one in kept if one["id"] == made["id"]] == [made]
    typed = next(one["data"] for one in kept if one["data"].get("typed") == "90.5")
    assert typed["typed_unit"] == "F"
    assert typed["value"] == pytest.approx((90.5 - 32) / 1.8)

    # Put right on the same pad: the figure keeps the unit it was typed in.
    page.locator(".row", has_text=f"90,5{NB}°F").first.tap()
    page.locator(".row", has_text="Corregir").first.tap()
    for key in "91,4":
        page.locator(".key", has_text=key).first.tap()
        page.wait_for_timeout(120)
    page.locator(".primary").tap()
    page.locator(".choice").first.tap()
    page.locator(".primary").tap()
    mended = until(
        lambda: phone.run(
            "return (await db.everything())"
            ".find((one) => one.kind === 'entry_corrected') ?? null"
        ),
        "the correction to be kept",
    )
    # By hand: 91.4 °F is 33 °C.
    assert mended["data"]["set"] == {
        "value": pytest.approx(33),
        "typed": "91.4",
        "typed_unit": "F",
    }
    show(phone, f"make/{make}/record")

    # Another person takes the same phone: English and Celsius, at once.
    orla = next(
        one["id"] for one in creamery.ask("GET", "/people") if one["name"] == "Orla"
    )
    phone.run("await actions.setPerson(args[0])", orla)
    in_language(page, "en")
    for told in (f"31.5{NB}°C", f"91.4{NB}°F (33.0{NB}°C)"):
        until(lambda told=told: told in page.locator(".screen").inner_text(), told)
    mara = phone.run("return state.me.value.person.id")
    phone.run("await actions.setPerson(args[0])", mara)
    in_language(page, "es")

    # A note follows the person; what a rule says stays as the thermometer reads.
    said = phone.run("""
      const { noteWords } = await import("/js/screens/sums/notes.js");
      const units = { value: "C", limit: "C" };
      return [
        noteWords({key: "water_hotter_than_most", value: 70, limit: 60, units}),
        noteWords({key: "temperature_never_reached", value: 62, limit: 63, units,
          as_read: true}),
      ];
    """)
    # By hand: 70 °C is 158 °F, 60 °C is 140 °F.
    assert f"158,0{NB}°F" in said[0]
    assert f"140,0{NB}°F" in said[0]
    assert f"63,0{NB}°C" in said[1]

    # With the network it goes to the server, for their other phones too.
    phone.context.set_offline(False)
    phone.reload()
    until(
        lambda: (
            [
                (one["language"], one["temp_unit"])
                for one in creamery.ask("GET", "/people")
                if one["name"] == "Mara"
            ]
            == [("es", "F")]
        ),
        "the server to know",
    )
    other = new_phone(name="Mara")
    in_language(other.page, "es")
    assert (
        other.run("return (await import('/js/data/reads.js')).reads.value.temp_unit")
        == "F"
    )
    assert phone.run("return (await db.getSaved(['reads']))[0]") == {}


def test_a_setting_of_somebody_else_stays_on_a_makers_phone(creamery, at_reading):
    phone, _, _ = at_reading
    orla = next(
        one["id"] for one in creamery.ask("GET", "/people") if one["name"] == "Orla"
    )
    phone.run("await actions.setPerson(args[0])", orla)
    choose(phone.page, "Français")
    in_language(phone.page, "fr")
    phone.page.get_by_role("status").filter(has_text="ce téléphone").first.wait_for()
    phone.reload()
    in_language(phone.page, "fr")
    told = [one["language"] for one in creamery.ask("GET", "/people")]
    assert told == [None, None]


def test_before_there_is_a_person_the_phones_language_holds_and_can_be_changed(
    creamery, new_phone
):
    phone = new_phone(paired=False, scripts=[SPANISH])
    page = phone.page
    assert lang(page) == "es"
    assert "quesería" in page.locator("h1").inner_text().lower()
    page.get_by_role("button", name="Français").tap()
    in_language(page, "fr")
    phone.pair(creamery.invite("Ana", "helper"))
    in_language(page, "fr")
    until(
        lambda: "fr" in [one["language"] for one in creamery.ask("GET", "/people")],
        "the person to have the language that was picked",
    )


PLACES = [
    "now", "menu", "who", "words", "make/ID", "make/ID/steps",
    "make/ID/reading/receive/milk_temp_c", "make/ID/reading/receive/ph",
    "make/ID/skip/heat", "make/ID/begin/heat", "make/ID/record", "make/ID/batch",
]  # fmt: skip


@pytest.mark.parametrize("code", ["es", "fr"])
def test_longer_words_stay_within_their_buttons_on_a_narrow_phone(at_reading, code):
    phone, make, _ = at_reading
    phone.page.set_viewport_size({"width": 360, "height": 740})
    reads = "(await import('/js/data/reads.js'))"
    phone.run(f"await {reads}.changeReads({{language: args[0], temp_unit: 'F'}})", code)
    in_language(phone.page, code)
    found = {}
    for place in PLACES:
        show(phone, place.replace("ID", make))
        page = phone.page
        rows = [*page.evaluate(CUT_OFF), *page.evaluate(TOO_WIDE)]
        if rows:
            found[place] = rows
    assert found == {}


@pytest.fixture
def packed_phone(tmp_path, packed_program, packed_ready, play, new_phone):
    """A phone of a server with the packed page, as phones load it."""
    server = Creamery(tmp_path / "packed", packed_program, packed_ready)
    server.folder.mkdir()
    try:
        server.start()
        server.own()
        link = f"{server.url}/#/pair/{server.invite('Ana', 'maker')}"
        yield new_phone(paired=False, url=link)
    finally:
        server.kill()


@pytest.mark.everyday
def test_the_packed_page_opens_in_spanish_with_no_network(packed_phone):
    phone, page = packed_phone, packed_phone.page
    asked = []
    page.on("request", lambda one: asked.append(one.url.rpartition("/")[2]))
    page.locator(".primary").tap()
    page.locator(".status-button").nth(1).wait_for()
    phone.keep()
    held = "caches.match('/lib/lang-es.js').then((one) => Boolean(one))"
    until(lambda: page.evaluate(held), "the languages to be kept in quiet time")
    # Nobody reads it yet: the first painting did not wait for it.
    assert "lang-es.js" not in asked
    assert lang(page) == "en"
    phone.context.set_offline(True)
    choose(page, "Español")
    in_language(page, "es")
    page.goto("about:blank")
    page.add_init_script(FIRST_WORDS)
    page.goto(re.sub("#.*", "#/now", phone.url))
    phone.painted()
    assert lang(page) == "es"
    # Not even for a moment in English.
    first = page.evaluate("window.firstWords")
    assert "Sin red" in first
    assert "No network" not in first
