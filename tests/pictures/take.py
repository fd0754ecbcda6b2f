"""Take a picture of every screen in three sizes, two themes and three languages.

Two days of the invented creamery stand still at one instant, so that a picture
changes only where a screen does. `tests/browser/test_pictures.py` holds what it
takes against the sheets in `kept/`; a change that is meant is kept by

    python -m tests.pictures.take

which writes the sheets anew, to be looked at before they are committed.
"""

import contextlib
import tempfile
from pathlib import Path

from playwright.sync_api import sync_playwright

from demo import second_day, seed
from tests.browser.conftest import (
    KEEP_LATER,
    Creamery,
    Phone,
    copy_unpacked,
    owned,
)
from tests.browser.nursery import nursery
from tests.browser.test_screens import LATE, show
from tests.pictures import sheet

KEPT = Path(__file__).parent / "kept"
LANGUAGES = ("en", "es", "fr")
SIZES = {"phone": (412, 839), "tablet": (820, 1180), "desk": (1440, 900)}
SCHEMES = ("light", "dark")
READER = "Nell Osric"
LETTERS = "DejaVu Sans"
ALIKE = 3  # pictures in a row, before a screen has come to rest
MOST_TRIES = 40
TRY_MS = 150
# Later than any machine's clock: a server's fast clock only ever goes on from what
# its log holds. 12 May 2038, 09:40 in the invented creamery.
NOW_MS = 2_157_352_800_000
# The wall clock agrees with the server's, and the time that is shown stands still.
STANDS_STILL = f"""
(() => {{
  const [real, ahead] = [Date.now.bind(Date), {NOW_MS} - Date.now()];
  Date.now = () => real() + ahead;
  import("/js/data/clock.js").then(({{ clock }}) => {{
    clock.nowMs = () => {NOW_MS};
  }});
}})();
"""

# By day, its seed and the places; names in capitals stand for ids.
FIRST_DAY = [
    "now", "menu", "wall", "makes", "alarms", "trends", "store", "store/new",
    "store/tank/TANK", "store/make/HARVEST", "new", "recipes", "recipes/washed-wheel",
    "sums", "sums/wash", "sum/wash_water", "sum/wash_water/vat_temp_c", "who", "words",
    "pin", "people", "pair", "guest", "make/EVENING", "make/EVENING/steps",
    "make/EVENING/record",
    "make/EVENING/curve", "make/EVENING/equipment", "make/EVENING/lab",
    "make/EVENING/milk", "make/EVENING/batch", "make/EVENING/note",
    "make/EVENING/timer", "make/EVENING/other/wash_1",
    "make/EVENING/reading/wash_1/curd_temp_c", "make/EVENING/skip/wash_2",
    "make/EVENING/sum/wash_1/wash_water", "make/HARVEST", "make/FROST",
]  # fmt: skip
SECOND_DAY = [
    "now", "wall", "alarms", "trends", "trends/washed-wheel", "look", "makes",
    "make/MORNING", "make/DAWN", "make/DAWN/judge/set", "make/NIGHT",
    "make/NIGHT/steps",
]  # fmt: skip
DAYS = {"first": (seed, FIRST_DAY), "second": (second_day, SECOND_DAY)}


class OtherLettersError(Exception):
    """This machine draws text in other letters than the kept sheets have."""


class Seeded(Creamery):
    """A creamery whose people and makes a seed has written.

    Args:
        folder: where its data lies.
        program: folder of the program.
        nursery: of the program.
        day: the module of the seed.
    """

    options = ("--replay", "1.000001")
    owner = seed.OWNER.name

    def __init__(self, folder, program, nursery, day):
        super().__init__(folder, program, nursery)
        day.seed(self.data, NOW_MS)

    def ids(self):
        """Return the ids of what the places name, by the name there."""
        found = {
            row["name"].split()[0].upper(): row["id"]
            for row in self.ask("GET", "/makes")["makes"]
        }
        for event in self.events():
            if event["kind"] == "tank_opened":
                found["TANK"] = event["make"]
        return found


@contextlib.contextmanager
def reader(play, server, language):
    """Let a maker's phone of a creamery be open, in a language.

    Args:
        play: of Playwright.
        server: the Seeded.
        language: code of the language.
    """
    phone = Phone(play, server.folder / f"phone-{language}", server.url)
    phone.scripts = [KEEP_LATER, STANDS_STILL]
    phone.settings = {"timezone_id": "Europe/Dublin", "reduced_motion": "reduce"}
    phone.open()
    try:
        phone.pair(server.invite(READER, "maker"))
        reads = "(await import('/js/data/reads.js'))"
        phone.run(f"await {reads}.changeReads({{language: args[0]}})", language)
        phone.run(LATE)
        phone.until(f"document.documentElement.lang === {language!r}", "the language")
        phone.until(
            f"state.board.value?.makes.length >= {len(server.ids()) - 1}", "all"
        )
        yield phone
    finally:
        phone.close()


def require_letters(phone):
    """Refuse a machine whose letters are not those of the kept sheets.

    Args:
        phone: the Phone.

    Raises:
        OtherLettersError: they are others.
    """
    cdp = phone.context.new_cdp_session(phone.page)
    for domain in ("DOM", "CSS"):
        cdp.send(f"{domain}.enable")
    root = cdp.send("DOM.getDocument")["root"]["nodeId"]
    title = {"nodeId": root, "selector": "#app h1, #app h2, #app .primary"}
    node = cdp.send("DOM.querySelector", title)["nodeId"]
    fonts = cdp.send("CSS.getPlatformFontsForNode", {"nodeId": node})["fonts"]
    families = {font["familyName"] for font in fonts}
    cdp.detach()
    if families != {LETTERS}:
        raise OtherLettersError(f"text is drawn in {sorted(families)}, not {LETTERS}")


def at_rest(page):
    """Return a screenshot of a page once it shows the same several times in a row.

    Args:
        page: of Playwright.
    """
    alike, before = 1, b""
    for _ in range(MOST_TRIES):
        seen = page.screenshot(scale="css", animations="disabled")
        alike = alike + 1 if seen == before else 1
        if alike == ALIKE:
            break
        before = seen
        page.wait_for_timeout(TRY_MS)
    return seen


def pictures(phone, ids, places):
    """Yield each place's picture in each size and theme.

    Args:
        phone: the Phone.
        ids: by the names that places have for them.
        places: addresses.

    Yields:
        (place, size, scheme, picture).
    """
    for place in places:
        words = [ids.get(word, word) for word in place.split("/")]
        show(phone, "/".join(words))
        for size, (width, height) in SIZES.items():
            phone.page.set_viewport_size({"width": width, "height": height})
            for scheme in SCHEMES:
                phone.page.emulate_media(color_scheme=scheme)
                # A curve is drawn anew in other colours.
                yield place, size, scheme, sheet.shrunk(at_rest(phone.page))


def take(play, folder, program, ready, day):
    """Return all sheets of a day, by their name; each a dict of cells.

    Args:
        play: of Playwright.
        folder: for the data of the day; it is made.
        program: folder of the program, its page unpacked.
        ready: its nursery.
        day: name of the day.
    """
    module, places = DAYS[day]
    folder.mkdir(parents=True, exist_ok=True)
    sheets = {}
    with owned(Seeded(folder, program, ready, module)) as server:
        ids = server.ids()
        for language in LANGUAGES:
            with reader(play, server, language) as phone:
                for place, *kind, cell in pictures(phone, ids, places):
                    name = "-".join([day, language, *kind])
                    sheets.setdefault(name, {})[place] = cell
    return sheets


def main():
    """Keep every sheet as the screens look now."""
    KEPT.mkdir(exist_ok=True)
    with tempfile.TemporaryDirectory() as made, sync_playwright() as play:
        program = Path(made, "program")
        copy_unpacked(program, "server", "static")
        with nursery(program) as ready:
            for day in DAYS:
                for name, cells in take(
                    play, Path(made, day), program, ready, day
                ).items():
                    sheet.save(KEPT / f"{name}.png", cells)
                    print(f"{name}: {len(cells)} screens", flush=True)


if __name__ == "__main__":
    main()
