"""The demo's pictures: one of each screen, there, small, and as the screen showed."""

import json
import re
from pathlib import Path

import pytest

from demo import second_day, seed
from demo.camera import LARGEST_BYTES
from demo.screenshots import PICTURES, gallery
from server.core import desk
from tests.conftest import ROOT, untraced

NAMED = re.findall(
    r"\((demo/screenshots/[\w-]+\.png)\)", (ROOT / "README.md").read_text("utf-8")
)
FOLDER = ROOT / "demo" / "screenshots"
NOW_MS = 1_795_600_000_000
MOST_BYTES = 2_500_000  # of all pictures together
SIGNATURE = bytes([0x89]) + b"PNG\r\n\x1a\n"


def routes():
    """Return the first part of each address that the screens answer to."""
    screens = ROOT / "static" / "js" / "screens" / "index.js"
    text = screens.read_text("utf-8")
    table = re.search(r"^const SCREENS = \{\n(.*?)^\};", text, re.M | re.S)[1]
    # A guest's page has an address of its own, beside the table.
    return re.findall(r"^  (\w+):", table, re.M) + re.findall(
        r"asked === ['\"](\w+)['\"]\)\s+return", text
    )


@pytest.mark.parametrize("plan", second_day.PLANS, ids=lambda plan: plan.step)
def test_a_make_of_the_second_day_is_at_the_step_of_its_plan(plan):
    recipe = json.loads(seed.RECIPE.read_text("utf-8"))
    with untraced():
        make = seed.reached(recipe, plan, seed.phones(), NOW_MS)
    steps = desk.view(make.desk, make.make, NOW_MS)["steps"]
    running = [row for row in steps if row["status"] == "running"]
    assert [row["key"] for row in running] == [plan.step]
    assert running[0]["begun"]["at_ms"] == pytest.approx(
        NOW_MS - plan.past_ms, abs=1000
    )


def test_the_readme_names_pictures():
    assert len(NAMED) >= 4
    assert {name for name in NAMED if Path(name).stem not in PICTURES} == set()


def test_the_routes_of_the_screens_are_read():
    assert {"now", "make", "pair", "guest"} <= set(routes())


@pytest.mark.parametrize("route", routes())
def test_every_screen_has_a_picture(route):
    shown = {address.split("/")[0] for address, _ in PICTURES.values()}
    assert route in shown


@pytest.mark.parametrize("name", PICTURES)
def test_each_picture_lies_there_and_is_small(name):
    picture = (FOLDER / f"{name}.png").read_bytes()
    assert picture.startswith(SIGNATURE)
    assert len(picture) <= LARGEST_BYTES


def test_all_pictures_together_are_small_and_each_is_in_the_table():
    found = {path.stem: path.stat().st_size for path in FOLDER.iterdir()}
    assert set(found) == set(PICTURES)
    assert sum(found.values()) <= MOST_BYTES


def test_the_page_of_pictures_is_as_the_table_says():
    assert (ROOT / "demo" / "README.md").read_text("utf-8") == gallery()
