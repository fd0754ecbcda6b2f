"""Sheets keep what they were given, and tell what looks otherwise."""

import io

import pytest
from PIL import Image, ImageDraw

from tests.browser.test_axe import routes
from tests.pictures import sheet
from tests.pictures.take import DAYS, KEPT, LANGUAGES, SCHEMES, SIZES

PHONE = (412, 839)
NAMES = [
    f"{day}-{language}-{size}-{scheme}"
    for day in DAYS
    for language in LANGUAGES
    for size in SIZES
    for scheme in SCHEMES
]
MOST_BYTES = 6_000_000
# A phone's own figures: its number, and how much room it has left. And how the stream
# of the live view stands, which comes and goes.
UNTAKEN = {"device", "live"}


def screenshot(words="Pour 47 L of water", ink=0):
    """Return a picture of a line of words, as a browser would give it."""
    picture = Image.new("RGB", PHONE, "white")
    ImageDraw.Draw(picture).text((40, 300), words, fill=(ink,) * 3, font_size=40)
    written = io.BytesIO()
    picture.save(written, "PNG")
    return written.getvalue()


@pytest.mark.parametrize("count", [1, 8, 9])
def test_a_sheet_gives_back_the_cells_it_was_given(tmp_path, count):
    cells = {f"screen {n}": sheet.shrunk(screenshot(f"{n} L")) for n in range(count)}
    sheet.save(tmp_path / "kept.png", cells)
    read = sheet.read(tmp_path / "kept.png")
    assert list(read) == list(cells)
    assert all(read[name].tobytes() == cells[name].tobytes() for name in cells)


def test_what_looks_the_same_has_not_changed():
    cells = {"make": sheet.shrunk(screenshot())}
    assert sheet.changed(cells, {"make": sheet.shrunk(screenshot())}) == {}


def test_an_edge_that_is_a_shade_lighter_is_no_change():
    one, other = (sheet.shrunk(screenshot(ink=ink)) for ink in (0, 24))
    assert sheet.changed({"make": one}, {"make": other}) == {}


@pytest.mark.parametrize("words", ["Pour 47 L of brine", "Pour the water", ""])
def test_other_words_are_a_change(words):
    kept = {"make": sheet.shrunk(screenshot()), "now": sheet.shrunk(screenshot("Now"))}
    taken = {**kept, "make": sheet.shrunk(screenshot(words))}
    assert list(sheet.changed(kept, taken)) == ["make"]


def test_a_screen_on_one_side_alone_is_a_change():
    cells = {"make": sheet.shrunk(screenshot())}
    assert sheet.changed(cells, {}) == sheet.changed({}, cells) == {"make": 1.0}


def test_another_size_is_a_change():
    small = Image.new("L", (10, 10))
    assert sheet.other_frac(small, small.crop((0, 0, 10, 9))) == 1.0


@pytest.mark.parametrize("name", NAMES)
def test_each_kept_sheet_holds_the_screens_that_are_taken(name):
    _, places = DAYS[name.split("-")[0]]
    assert list(sheet.read(KEPT / f"{name}.png")) == places


def test_the_kept_sheets_are_those_of_every_size_theme_and_language_and_small():
    sizes = {path.stem: path.stat().st_size for path in KEPT.iterdir()}
    assert set(sizes) == set(NAMES)
    assert sum(sizes.values()) <= MOST_BYTES


def test_every_route_is_among_the_screens_that_are_taken():
    taken = {place.split("/")[0] for _, of_day in DAYS.values() for place in of_day}
    assert routes() - taken == UNTAKEN
