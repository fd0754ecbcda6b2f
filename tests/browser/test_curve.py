"""The curve of a make as a person meets it: charts, buttons, and the tables."""

import pytest
from axe_playwright_python.sync_playwright import Axe

from deploy.pack_page import pack
from server.api.page_stamp import parts_of
from server.api.shell import LATER, Shell
from server.config import CORE_DIR
from tests.browser.conftest import ROOT, until
from tests.browser.test_screens import AXE, TOO_WIDE, problems_of_layout, show

CHARTS = ".curve-chart canvas"
ASKED = """() => performance.getEntriesByType("resource")
  .map((one) => new URL(one.name).pathname).filter((one) => one.includes("uplot"))"""
# How much of a chart is neither empty nor of one colour.
DRAWN = """(canvas) => {
  const { data } = canvas.getContext("2d").getImageData(
    0, 0, canvas.width, canvas.height);
  const found = new Set();
  for (let at = 0; at < data.length; at += 4) {
    if (data[at + 3] > 200) found.add(data.slice(at, at + 3).join());
  }
  return found.size;
}"""


def read(phone, make, quantity, value, step):
    data = {"quantity": quantity, "value": value, "step": step}
    return phone.record("reading_taken", make=make, data=data)


@pytest.fixture
def at_curve(new_phone):
    """A phone that shows the curve of a make with four readings."""
    phone = new_phone()
    make = phone.open_make()
    phone.record("step_begun", make=make, data={"step": "heat"})
    read(phone, make, "milk_temp_c", 31.5, "heat")
    read(phone, make, "air_space_temp_c", 66.0, "heat")
    phone.record("step_begun", make=make, data={"step": "starter"})
    read(phone, make, "ph", 6.58, "starter")
    read(phone, make, "ph", 5.9, "cut")
    show(phone, f"make/{make}/curve")
    phone.page.locator(CHARTS).nth(1).wait_for()
    return phone, make


def rows(phone):
    """Return what the first table says, a list of cells a reading."""
    found = phone.page.locator(".readings-table tbody tr")
    cells = [row.locator("td").all_inner_texts() for row in found.all()]
    return [[one.replace("\u00a0", " ") for one in row] for row in cells if row]


def test_no_other_screen_asks_for_the_plotting_library(new_phone):
    # Unpacked, the page is of more files than a browser remembers by itself.
    phone = new_phone(scripts=["performance.setResourceTimingBufferSize(2000)"])
    make = phone.open_make()
    for place in ("now", "live", f"make/{make}", f"make/{make}/record"):
        show(phone, place)
        assert phone.page.evaluate(ASKED) == [], place
    show(phone, f"make/{make}/curve")
    phone.page.locator(CHARTS).first.wait_for()
    assert set(phone.page.evaluate(ASKED)) == {"/lib/uplot.js", "/lib/uplot.css"}


def test_temperature_and_acid_are_drawn_and_told_in_a_table(at_curve):
    phone, _ = at_curve
    for chart in phone.page.locator(CHARTS).all():
        assert chart.evaluate(DRAWN) > 3
    told = [(cells[1].split("\n")[0], cells[2]) for cells in rows(phone)]
    assert told == [
        ("Milk", "31.5 °C"),
        ("Air space", "66.0 °C"),
        ("pH", "6.58"),
        ("pH", "5.90"),
    ]


def test_a_reading_off_its_band_says_so_in_a_word(at_curve):
    phone, _ = at_curve
    # The recipe's curve begins at pH 6.60; 5.90 is far below its band of 0.1.
    off = rows(phone)[3]
    assert "BELOW" in off[3]


def test_a_struck_reading_leaves_the_curve(at_curve):
    phone, make = at_curve
    made = read(phone, make, "milk_temp_c", 99.0, "heat")
    until(lambda: len(rows(phone)) == 5, "the new reading")
    why = {"why": "typed wrong"}
    phone.record("entry_struck", make=make, ref=made["id"], data=why)
    until(lambda: len(rows(phone)) == 4, "the reading to go")


def test_a_stretch_of_time_is_chosen_with_a_button(at_curve):
    phone, _ = at_curve
    shown = phone.page.get_by_text("Shown: ")
    seen = set()
    for name in ("Last hour", "Make day"):
        button = phone.page.get_by_role("button", name=name, exact=True)
        button.tap()
        until(lambda b=button: b.get_attribute("aria-pressed") == "true", name)
        seen.add(shown.inner_text())
        phone.page.wait_for_timeout(400)
    assert len(seen) == 2


def test_a_curve_opens_with_no_network(at_curve):
    phone, make = at_curve
    phone.kept_offline()
    phone.context.set_offline(True)
    phone.page.goto(phone.url + f"/#/make/{make}/curve")
    phone.reload()
    phone.page.locator(CHARTS).nth(1).wait_for()
    assert len(rows(phone)) == 4


@pytest.mark.parametrize(("wide", "high"), [(360, 740), (820, 1180), (1440, 900)])
def test_the_curve_keeps_sizes_and_gaps_and_never_runs_off(at_curve, wide, high):
    phone, _ = at_curve
    phone.page.set_viewport_size({"width": wide, "height": high})
    phone.page.wait_for_timeout(400)
    assert problems_of_layout(phone.page, wide, high) == []
    box = phone.page.locator(".curve-chart").first.bounding_box()
    canvas = phone.page.locator(CHARTS).first.bounding_box()
    assert abs(canvas["width"] - box["width"]) < 6  # the border of its frame
    phone.page.evaluate("document.documentElement.style.fontSize = '250%'")
    assert phone.page.evaluate(TOO_WIDE.replace("body *", "main *")) == []


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_every_text_of_the_curve_has_a_contrast_of_seven_to_one(at_curve, scheme):
    phone, _ = at_curve
    phone.page.emulate_media(color_scheme=scheme)
    phone.page.wait_for_timeout(400)
    result = Axe().run(phone.page, options=AXE)
    assert result.violations_count == 0, result.generate_report()


def test_the_tables_are_printed_whole(at_curve):
    phone, _ = at_curve
    phone.page.emulate_media(media="print")
    last = phone.page.locator(".curve-table").last.locator("tr").last
    hidden = phone.page.locator(".curve-spans").is_hidden()
    inside = last.evaluate("""(row) => {
      for (let one = row.parentElement; one; one = one.parentElement) {
        const style = getComputedStyle(one);
        if (style.overflowY !== "visible" && one.scrollHeight > one.clientHeight + 1) {
          return one.className;
        }
      }
      return "";
    }""")
    assert (hidden, inside) == (True, "")


def test_the_packed_page_leaves_the_plotting_library_out_and_a_phone_keeps_it():
    pack()
    first, later = parts_of(ROOT / "static")
    parts = ["lib/page.js", *first, *later]
    text = "".join((ROOT / "static" / name).read_text("utf-8") for name in parts)
    assert 'import("/lib/uplot.js")' in text
    assert "uPlot" not in text.replace('import("/lib/uplot.js")', "")
    kept = Shell(ROOT / "static", CORE_DIR).kept_files()
    assert {"/lib/page.js", *("/" + name for name in first)} <= set(kept)
    assert {"/" + name for name in later} & set(kept) == set()
    # Not with the page itself: in quiet time, see tests/web/sw.test.mjs.
    library = {"/lib/uplot.js", "/lib/uplot.css"}
    assert library <= set(LATER)
    assert library & set(kept) == set()
