"""Every route, light and dark, against the rules of axe up to level AAA of WCAG 2.2."""

import re

import pytest
from axe_playwright_python.sync_playwright import Axe

from tests.browser.conftest import ROOT
from tests.browser.test_screens import read_cautions, show

TAGS = ["wcag2a", "wcag2aa", "wcag2aaa", "wcag21a", "wcag21aa", "wcag22aa"]
# Axe would copy the style sheets into one of its own in the page, which the page's
# policy refuses; the one rule that reads it asks about a turned screen, and no
# style sheet here asks which way a screen is held.
RULES = {"runOnly": {"type": "tag", "values": TAGS}, "preload": False}
# By route, the places that are looked at; MAKE and TANK stand for their ids.
PLACES = {
    "now": ["now"],
    "make": [
        "make/MAKE",
        "make/MAKE/steps",
        "make/MAKE/record",
        "make/MAKE/curve",
        "make/MAKE/equipment",
        "make/MAKE/lab",
        "make/MAKE/milk",
        "make/MAKE/other/receive",
        "make/MAKE/reading/receive/milk_temp_c",
        "make/MAKE/reading/unmould/wheel_mass_kg",
        "make/MAKE/skip/heat",
    ],
    "makes": ["makes"],
    "new": ["new"],
    "live": ["live"],
    "recipes": ["recipes", "recipes/washed-wheel"],
    "people": ["people"],
    "alarms": ["alarms"],
    "wall": ["wall"],
    "look": ["look"],
    "device": ["device"],
    "sums": ["sums", "sums/wash", "sums/units"],
    "sum": ["sum/wash_water", "sum/wash_water/vat_temp_c"],
    "store": ["store", "store/new", "store/tank/TANK", "store/make/MAKE"],
    "trends": ["trends", "trends/washed-wheel"],
    "who": ["who"],
    "words": ["words"],
    "pin": ["pin"],
    "menu": ["menu"],
    "pair": ["pair"],
    "guest": ["guest"],
}


def routes():
    """Return the routes that the page knows, read off its own table."""
    text = (ROOT / "static/js/screens/index.js").read_text("utf-8")
    table = text.split("const SCREENS = {")[1].split("\n};")[0]
    found = set(re.findall(r"^  (\w+): \(", table, re.M))
    return found | set(re.findall(r'asked === "(\w+)"', text))


def test_the_places_looked_at_are_of_every_route():
    assert set(PLACES) == routes()


def test_no_style_sheet_asks_which_way_a_screen_is_held():
    for path in (ROOT / "static" / "css").glob("*.css"):
        assert "orientation" not in path.read_text("utf-8"), path.name


@pytest.fixture
def furnished(new_phone):
    """The owner's phone with a make that has begun, an alarm up, and a tank."""
    phone = new_phone("Asta Quern", "owner")
    sizes = [{"size": "small", "count": 20}, {"size": "large", "count": 4}]
    make = phone.open_make(moulds=sizes)
    show(phone, f"make/{make}")
    phone.page.locator(".primary").wait_for()
    read_cautions(phone)
    phone.record("step_begun", make=make, data={"step": "receive"})
    warm = {"quantity": "milk_temp_c", "value": 9.0, "step": "receive"}
    phone.record("reading_taken", make=make, data=warm)
    lasts = {"label": "Rinse the moulds in the sink", "lasts_s": 1}
    phone.record("timer_started", make=make, data=lasts)
    tank = phone.run("return crypto.randomUUID();")
    filled = {"name": "Stone tank", "mass_kg": 900.0, "salt_frac": 0.2}
    phone.record("tank_opened", make=tank, data=filled)
    phone.page.locator(".alarm-bar").wait_for()
    return phone, {"MAKE": make, "TANK": tank}


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_axe_finds_nothing_on_any_route(furnished, scheme):
    phone, ids = furnished
    phone.page.emulate_media(color_scheme=scheme, reduced_motion="reduce")
    found = {}
    for place in [one for places in PLACES.values() for one in places]:
        address = place
        for name, id_ in ids.items():
            address = address.replace(name, id_)
        show(phone, address)
        phone.page.wait_for_timeout(300)
        result = Axe().run(phone.page, options=RULES)
        if result.violations_count:
            found[place] = [
                (one["id"], [node["html"][:160] for node in one["nodes"]])
                for one in result.response["violations"]
            ]
    assert found == {}
