"""The demo's pictures: one of each screen, there, small, and as the screen showed."""

import json
import re
import struct
import zlib
from pathlib import Path

import pytest

from demo import second_day, seed
from demo.camera import LARGEST_BYTES
from demo.screenshots import PICTURES, gallery
from demo.small_png import MOST_COLOURS, small
from server.core import desk
from tests.conftest import ROOT, untraced

NAMED = re.findall(
    r"\((demo/screenshots/[\w-]+\.png)\)", (ROOT / "README.md").read_text("utf-8")
)
FOLDER = ROOT / "demo" / "screenshots"
NOW_MS = 1_795_600_000_000
MOST_BYTES = 2_500_000  # of all pictures together
SIGNATURE = bytes([0x89]) + b"PNG\r\n\x1a\n"


def chunk(name, data):
    check = struct.pack(">I", zlib.crc32(name + data))
    return struct.pack(">I", len(data)) + name + data + check


def png(wide, high, kind, rows):
    head = struct.pack(">IIBBBBB", wide, high, 8, kind, 0, 0, 0)
    data = zlib.compress(bytes(rows))
    return SIGNATURE + chunk(b"IHDR", head) + chunk(b"IDAT", data) + chunk(b"IEND", b"")


def dots(picture):
    """Read a picture of numbered colours as rows of (red, green, blue)."""
    parts, at = {}, len(SIGNATURE)
    while at < len(picture):
        (length,) = struct.unpack(">I", picture[at : at + 4])
        parts[picture[at + 4 : at + 8]] = picture[at + 8 : at + 8 + length]
        at += length + 12
    wide, high = struct.unpack(">II", parts[b"IHDR"][:8])
    colours, raw = parts[b"PLTE"], zlib.decompress(parts[b"IDAT"])
    found = []
    for row in range(high):
        numbers = raw[row * (wide + 1) + 1 : (row + 1) * (wide + 1)]
        found.append([tuple(colours[3 * n : 3 * n + 3]) for n in numbers])
    return found


# By hand: five rows of (10, 20, 30), (12, 24, 36), each written with another
# filter of the PNG specification, part 9: none, left, above, mean, Paeth.
FILTERED = [
    *(0, 10, 20, 30, 12, 24, 36),
    *(1, 10, 20, 30, 2, 4, 6),
    *(2, 0, 0, 0, 0, 0, 0),
    # mean of left and above: (0 + 10) // 2 = 5, then (10 + 12) // 2 = 11
    *(3, 5, 10, 15, 1, 2, 3),
    # Paeth: above for the first dot; for the second 10 + 12 - 10 = 12, above
    *(4, 0, 0, 0, 0, 0, 0),
]


def test_a_small_picture_shows_what_the_large_one_showed():
    shown = dots(small(png(2, 5, 2, FILTERED)))
    assert shown == [[(10, 20, 30), (12, 24, 36)]] * 5


def test_the_commonest_colours_stay_exact_and_rare_ones_become_the_nearest():
    rows = []
    for shade in range(MOST_COLOURS):
        rows += [0, shade, 0, 0, shade, 0, 0]
    rows += [0, 7, 1, 0, 7, 0, 0]  # a colour too many, once
    shown = dots(small(png(2, MOST_COLOURS + 1, 2, rows)))
    assert shown[:-1] == [[(shade, 0, 0)] * 2 for shade in range(MOST_COLOURS)]
    assert shown[-1] == [(7, 0, 0)] * 2


def test_a_picture_of_another_kind_is_refused():
    with pytest.raises(ValueError, match="not read here"):
        small(png(1, 1, 0, [0, 7]))


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
