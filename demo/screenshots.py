"""Take a picture of every screen, from the invented creamery.

Two of its days are seeded into folders that are thrown away; the pictures
differ from run to run in the time of day only. Needs the packages and the
browser of the tests.

Use: python demo/screenshots.py [--to DIR]
"""

import argparse
import contextlib
import os
import shutil
import sys
import tempfile
from pathlib import Path

from playwright.sync_api import sync_playwright

ROOT = Path(__file__).resolve().parent.parent
sys.path.insert(0, str(ROOT))

from demo import brine, seed  # noqa: E402
from demo.camera import DESK, PHONE, TABLET, Album, Camera, Creamery  # noqa: E402

# Every picture: the route that it shows, and what is to be seen there.
PICTURES = {
    "phone-now": ("now", "Now: what is due, in every make"),
    "phone-make": ("make", "Make: the step at hand"),
    "phone-cautions": ("make", "The cautions beside a step that runs"),
    "phone-hold": ("make", "A hold with its clock and verdict"),
    "phone-press": ("make", "A press with its countdown"),
    "phone-keypad": ("make/reading", "The keypad for a reading"),
    "phone-why": ("make/skip", "Why a step is skipped"),
    "phone-judge": ("make/judge", "Judging the curd"),
    "phone-steps": ("make/steps", "Steps: the whole day"),
    "phone-record": ("make/record", "Record: every entry"),
    "phone-entry": ("make/record", "An entry with its correction"),
    "phone-curve": ("make/curve", "Curve: temperature and pH"),
    "phone-step-sum": ("make/sum", "A sum inside a step"),
    "phone-equipment": ("make/equipment", "What the creamery has"),
    "phone-sums": ("sums", "Sums: their topics"),
    "phone-sum": ("sum", "A sum with its answer"),
    "phone-store": ("store", "Store: tanks and ageing"),
    "phone-tank": ("store/tank", "A brine tank"),
    "phone-ageing": ("store/make", "The ageing of a make"),
    "phone-trends": ("trends", "Trends over makes"),
    "phone-alarms": ("alarms", "Alarms, and how each one rings"),
    "phone-makes": ("makes", "All makes"),
    "phone-new": ("new", "New make, with its equipment"),
    "phone-recipes": ("recipes", "A recipe and its sources"),
    "phone-people": ("people", "People and their phones"),
    "phone-who": ("who", "Who taps on this phone"),
    "phone-pin": ("pin", "The PIN of who signs"),
    "phone-words": ("words", "Words and units"),
    "phone-device": ("device", "This phone"),
    "phone-look": ("look", "What needs a look"),
    "phone-menu": ("menu", "Every place"),
    "phone-join": ("pair", "Joining a phone"),
    "phone-guest": ("guest", "What a guest's link shows"),
    "phone-lock": ("make", "The lock against wet hands"),
    "phone-dark": ("make", "The dark look"),
    "phone-spanish": ("make", "In Spanish"),
    "phone-french": ("make", "In French"),
    "tablet-make": ("make", "Make on a tablet"),
    "tablet-wall": ("wall", "Wall: the room's display"),
    "desk-live": ("live", "Live: for the owner at a desk"),
}
COLUMNS = 3
# The makes of both days, see seed.py and second_day.py.
EVENING, HARVEST = "Evening make", "Harvest make"
NIGHT, DAWN, MORNING = "Night make", "Dawn make", "Morning make"
MAKER, OWNER, HELPER = "Maren Okello", "Asta Quern", "Tobi Farrant"
SECOND_HELPER = "Iris Vance"


def take_wash(camera, makes):
    """Take a phone's pictures of a make at its wash.

    Args:
        camera: a Camera.
        makes: ids by name.
    """
    page, make = camera.page, ("make", makes[EVENING])
    camera.show("now", see=".card")
    camera.take("phone-now")
    camera.show_make(makes[EVENING])
    camera.take("phone-make")
    camera.show(*make, "steps", see=".step-row")
    camera.bring(".step-row.is-running")
    camera.take("phone-steps")
    camera.show(*make, "record", see=".record-time")
    camera.take("phone-record")
    camera.tap(page.locator(".row", has_text="Probe rinsed"))
    page.get_by_text("Probe rinsed").first.wait_for()
    camera.take("phone-entry")
    camera.show(*make, "reading", "wash_1", "curd_temp_c", see=".keys")
    camera.press("33.8")
    camera.take("phone-keypad")
    camera.show(*make, "skip", "wash_2", see=".choice")
    camera.tap(page.locator(".choice"))
    camera.take("phone-why")
    camera.show(*make, "curve", see="canvas")
    camera.take("phone-curve")
    camera.show(*make, "sum", "wash_1", "wash_water", see=".sum-value")
    camera.take("phone-step-sum")
    camera.show(*make, "equipment", see=".row")
    camera.take("phone-equipment")


def take_places(camera, makes):
    """Take a phone's pictures of what belongs to no one step.

    Args:
        camera: a Camera.
        makes: ids by name.
    """
    page = camera.page
    camera.show("menu", see=".row")
    camera.take("phone-menu")
    camera.show("sums", see=".topics .row")
    camera.take("phone-sums")
    for name, typed in (("milk_l", "1150"), ("strength_imcu_per_ml", "200")):
        camera.show("sum", "rennet_dose", name, see=".keys")
        camera.press(typed)
        camera.tap(page.locator(".foot .primary"))
        page.locator(".keys").wait_for(state="detached")
    page.locator(".sum-value").first.wait_for()
    camera.take("phone-sum")
    camera.show("store", see=".block .row")
    page.get_by_text(brine.NAME).wait_for()
    camera.take("phone-store")
    camera.tap(page.get_by_text(brine.NAME))
    page.locator(".drawn-bar").first.wait_for()
    camera.take("phone-tank")
    camera.show("store", "make", makes[HARVEST], see=".told")
    camera.take("phone-ageing")
    camera.show("new", see=".choice")
    camera.tap(page.locator(".choice"))
    camera.press("1150")
    camera.tap(page.locator(".foot .primary"))
    camera.tap(page.locator(".choice", has_text="usual here"))
    camera.tap(page.get_by_role("button", name="Long vat"))
    camera.bring(".block .row")
    camera.take("phone-new")
    camera.show("recipes", see=".row")
    camera.tap(page.locator(".row"))
    page.locator(".block").first.wait_for()
    camera.take("phone-recipes")
    camera.show("who", see=".choice")
    camera.take("phone-who")
    camera.show("pin", see=".pin-pad")
    camera.take("phone-pin")
    camera.show("words", see=".choice")
    camera.take("phone-words")
    camera.show("device", see=".facts")
    camera.take("phone-device")


def take_second_day(camera, makes):
    """Take a phone's pictures of a hold, a set, a press and charts.

    Args:
        camera: a Camera.
        makes: ids by name.
    """
    page = camera.page
    # On a slow machine the next round of the hold is late by now, and rings.
    silence = page.locator(".alarm-silence")
    if silence.count():
        camera.tap(silence)
        silence.wait_for(state="detached")
    camera.show("make", makes[MORNING], see=".caution-band")
    camera.tap(page.locator(".caution-band"))
    page.locator(".cautions").wait_for()
    camera.bring(".cautions")
    camera.take("phone-cautions")
    camera.tap(page.get_by_role("button", name="I have read this"))
    page.locator(".caution-band").wait_for(state="detached")
    camera.bring(".step-title")
    camera.take("phone-hold")
    camera.show("make", makes[DAWN], "judge", "set", see=".choice")
    camera.tap(page.locator(".choice"))
    camera.take("phone-judge")
    camera.show_make(makes[NIGHT])
    camera.take("phone-press")
    camera.tap(page.get_by_role("button", name="Lock"))
    page.locator(".lock-shown").wait_for()
    camera.take("phone-lock")
    # Kept over a reload, so that it can be left here without the hold.
    page.evaluate("localStorage.removeItem('wet-lock')")
    page.reload()
    camera.show("trends", see=".chart")
    camera.take("phone-trends")
    camera.show("makes", see=".row, .card")
    camera.take("phone-makes")
    camera.show("alarms", see=".rungs, .row")
    camera.take("phone-alarms")
    camera.show("look", see=".alert")
    camera.take("phone-look")


def take_people(camera):
    """Take the owner's picture of the people.

    Args:
        camera: a Camera.
    """
    camera.show("people", see=".row-buttons")
    camera.take("phone-people")


def take_outside(camera, creamery):
    """Take the pictures of those who have not joined.

    Args:
        camera: a Camera of a browser that has no part in the creamery.
        creamery: the Creamery.
    """
    camera.page.goto(f"{creamery.url}/#/pair")
    camera.page.get_by_role("button", name="Join").wait_for()
    camera.take("phone-join")
    camera.page.goto(creamery.link_for_guest("Buyer in town", EVENING))
    camera.page.reload()
    camera.tap(camera.page.locator(".card"))
    camera.page.locator("canvas").first.wait_for()
    camera.take("phone-guest")


def take_language(camera, make, language, name):
    """Take a make's picture in another language, which stays the person's own.

    Args:
        camera: a Camera.
        make: id of the make.
        language: as it is called in itself.
        name: of the picture.
    """
    camera.show_make(make)
    camera.show("words", see=".choice")
    camera.tap(camera.page.get_by_role("button", name=language))
    camera.page.wait_for_function(
        "(before) => document.querySelector('h1').textContent !== before",
        arg="Words and units",
    )
    camera.show("make", make, see=".step-title")
    camera.take(name)


def take_first(browser, creamery, album):
    """Take the pictures of the first day.

    Args:
        browser: Playwright's browser.
        creamery: the Creamery.
        album: the Album.
    """
    makes = creamery.makes()

    def joined(size, name, **how):
        return Camera(browser, size, album, **how).join(creamery, name, EVENING)

    phone = joined(PHONE, MAKER)
    take_wash(phone, makes)
    take_places(phone, makes)
    take_people(joined(PHONE, OWNER))
    take_outside(Camera(browser, PHONE, album), creamery)
    tablet = joined(TABLET, HELPER)
    tablet.show_make(makes[EVENING])
    tablet.take("tablet-make")
    desk = joined(DESK, OWNER)
    desk.show("live", see=".live-card")
    desk.page.get_by_text("LIVE", exact=True).wait_for()
    desk.take("desk-live")
    dark = joined(PHONE, MAKER, scheme="dark")
    dark.show_make(makes[EVENING])
    dark.take("phone-dark")
    for language, who in (("Español", HELPER), ("Français", SECOND_HELPER)):
        name = {"Español": "phone-spanish", "Français": "phone-french"}[language]
        take_language(joined(PHONE, who), makes[EVENING], language, name)


def take_second(browser, creamery, album):
    """Take the pictures of the second day.

    Args:
        browser: Playwright's browser.
        creamery: the Creamery.
        album: the Album.
    """
    makes = creamery.makes()
    phone = Camera(browser, PHONE, album).join(creamery, MAKER, MORNING)
    take_second_day(phone, makes)
    wall = Camera(browser, TABLET, album).join(creamery, SECOND_HELPER, MORNING)
    wall.show("wall", see=".wall-row")
    wall.tap(wall.page.locator(".wall-unlock"))
    wall.page.locator(".wall-unlock").wait_for(state="detached")
    wall.take("tablet-wall")


@contextlib.contextmanager
def served(program, seed):
    """Serve a day from a folder that is thrown away.

    Args:
        program: folder of the program.
        seed: the script that fills it.
    """
    with tempfile.TemporaryDirectory() as data:
        creamery = Creamery(program, Path(data), seed)
        try:
            yield creamery
        finally:
            creamery.stop()


def gallery():
    """Return the page that shows every picture, in Markdown."""
    cells = [
        f'<img src="screenshots/{name}.png" width="240" alt="{words}"><br>{words}'
        for name, (_, words) in PICTURES.items()
    ]
    cells += [""] * (-len(cells) % COLUMNS)
    rows = [cells[i : i + COLUMNS] for i in range(0, len(cells), COLUMNS)]
    lines = [f"| {' | '.join(row)} |" for row in rows]
    lines[1:1] = ["|" + "---|" * COLUMNS]
    return "\n".join(
        [
            "# What a person sees",
            "",
            "Made by `python demo/screenshots.py` from the invented creamery;"
            " every name and figure of its people and makes is invented.",
            "",
            f"{seed.MAKER.name} signs in it with the PIN {seed.MAKER_PIN}.",
            "",
            *lines,
            "",
        ]
    )


def take_all(folder):
    """Take every picture.

    Args:
        folder: where the pictures go.

    Raises:
        ValueError: the table names other pictures than were taken.
    """
    found = os.environ.get("CHROMIUM") or shutil.which("chromium")
    album = Album(folder)
    leave = shutil.ignore_patterns("__pycache__", "node_modules", "screenshots")
    with sync_playwright() as play, tempfile.TemporaryDirectory() as program:
        for name in ("server", "static", "demo"):
            shutil.copytree(ROOT / name, Path(program) / name, ignore=leave)
        browser = play.chromium.launch(
            executable_path=found or None, args=["--no-sandbox"]
        )
        with served(program, "seed.py") as creamery:
            take_first(browser, creamery, album)
        with served(program, "second_day.py") as creamery:
            take_second(browser, creamery, album)
        browser.close()
    other = set(PICTURES).symmetric_difference(album.names)
    if other:
        raise ValueError(f"Taken but not in the table, or not taken: {sorted(other)}")


def main():
    """Seed, serve, take the pictures and clean up."""
    parser = argparse.ArgumentParser(description=__doc__.split("\n\n")[0])
    parser.add_argument(
        "--to", type=Path, default=ROOT / "demo" / "screenshots", metavar="DIR"
    )
    folder = parser.parse_args().to
    folder.mkdir(parents=True, exist_ok=True)
    take_all(folder)
    (folder.parent / "README.md").write_text(gallery(), "utf-8")


if __name__ == "__main__":
    main()
