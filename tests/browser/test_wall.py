"""The wall fills its display in any shape and is read from across the room."""

import os
import re

import pytest

from tests.browser.conftest import until
from tests.browser.test_screens import TOO_WIDE, show

# Width, height [px], real width, and least height of a digit [mm] beside the nearest:
# a tablet, two displays of 24 inches.
WALLS = [(820, 1180, 158, 14.5), (1280, 720, 531, 23), (1920, 1080, 531, 23)]
# Digits of the page's type are 0.7 of its size at least. At 5 m, 22 minutes of arc are
# 32 mm, 16 are 23 mm, and 10, which sight of 6/12 just reads, 14.5 mm.
DIGIT = 0.7
PREFERRED_MM = 32
WALL = """() => {
  const box = (one) => one.getBoundingClientRect();
  const size = (one) => parseFloat(getComputedStyle(one).fontSize);
  const items = [...document.querySelectorAll(".wall-item")];
  const rows = box(document.querySelector(".wall-rows"));
  const bands = box(document.querySelector(".wall-bands"));
  const area = (one) => box(one).width * box(one).height;
  const used = items.reduce((sum, one) => sum + area(one), 0);
  const times = [...document.querySelectorAll(".wall-time")];
  return {
    used: used / (rows.width * rows.height),
    rows: rows.height / innerHeight,
    left: rows.left / innerWidth,
    right: 1 - rows.right / innerWidth,
    foot: 1 - bands.bottom / innerHeight,
    sizes: times.map(size),
    isFirstNearest: items[0].contains(times[0]),
    cut: times.filter((one) => {
      const item = one.closest(".wall-item");
      return box(one).right > box(item).right || box(one).bottom > box(item).bottom + 1;
    }).map((one) => one.textContent),
    nameless: items.filter((one) =>
      !one.querySelector(".wall-vat").textContent.trim()).length,
    marks: items.filter((one) => one.querySelector(".mark")).length,
  };
}"""


def picture(page, name):
    """Keep a picture where it is asked for, to be looked at."""
    if os.environ.get("PICTURES"):
        page.screenshot(path=f"{os.environ['PICTURES']}/{name}.png")


def timer(phone, make, lasts_s, label):
    data = {"label": label, "lasts_s": lasts_s}
    return phone.record("timer_started", make=make, data=data)


def unlocked(page):
    """Press what lets the wall ring, again while it takes no press yet."""
    button = page.locator(".wall-unlock")
    if button.count():
        button.click()
        page.wait_for_timeout(500)
    return button.count() == 0


@pytest.fixture
def room(new_phone):
    """A maker's phone with two vats: three timers in one, one in the other."""
    phone = new_phone()
    phone.first = phone.open_make(name="North", vat="Long vat", batch="N1")
    phone.second = phone.open_make(name="South", vat="Round vat", batch="S1")
    phone.record("step_begun", make=phone.first, data={"step": "receive"})
    data = {"quantity": "milk_temp_c", "value": 4.2, "typed": "4.2", "step": "receive"}
    phone.record("reading_taken", make=phone.first, data=data)
    phone.nearest = timer(phone, phone.first, 1500, "Drain")
    for minutes in (40, 55):
        timer(phone, phone.first, 60 * minutes, f"Turn {minutes}")
    timer(phone, phone.second, 3000, "Cut")
    phone.sent()
    return phone


def test_the_wall_is_filled_and_read_from_five_metres(room, new_phone):
    wall = new_phone("Room", role="viewer")
    page = wall.page
    show(wall, "wall")
    page.locator(".wall-row", has_text="Cut").wait_for()
    until(lambda: unlocked(page), "the wall to be unlocked")
    for wide, high, wide_mm, least_mm in WALLS:
        page.set_viewport_size({"width": wide, "height": high})
        page.wait_for_timeout(300)
        picture(page, f"wall-{wide}")
        seen = page.evaluate(WALL)
        mm = [DIGIT * size * wide_mm / wide for size in seen["sizes"]]
        assert seen["used"] >= 0.9, (wide, seen)  # the rest is gaps
        assert seen["rows"] >= 0.6, (wide, seen)
        assert max(seen["left"], seen["right"], seen["foot"]) <= 0.03, (wide, seen)
        assert seen["isFirstNearest"], wide
        assert "Drain" in page.locator(".wall-item").first.inner_text()
        assert mm[0] >= PREFERRED_MM, (wide, mm)
        assert mm[0] == max(mm), (wide, mm)
        assert min(mm) >= least_mm, (wide, mm)
        assert seen["cut"] == [], wide
        assert seen["nameless"] == 0, wide
        assert page.evaluate(TOO_WIDE) == [], wide
    bands = page.locator(".wall-band .day-band")
    assert bands.count() == 2
    assert "now" in bands.first.get_attribute("aria-label")


@pytest.mark.everyday
def test_what_is_late_stays_large_on_the_wall_once_it_is_silenced(room, new_phone):
    wall = new_phone("Room", role="viewer")
    page = wall.page
    page.set_viewport_size({"width": 1280, "height": 720})
    show(wall, "wall")
    late = room.run(
        'return record("timer_started", {make: args[0],'
        ' atMs: nowMs() - 50 * 60000, data: {label: "Lid", lasts_s: 60}})',
        room.second,
    )
    room.sent()
    page.locator('[data-alarm="unacknowledged"]', has_text="Lid").wait_for()
    picture(page, "wall-rings")
    seen = {"alert": "timer/" + late["id"]}
    room.record("alert_acknowledged", make=room.second, data=seen)
    room.sent()
    row = page.locator('[data-alarm="acknowledged"]', has_text="Lid")
    row.wait_for()
    picture(page, "wall-silenced")
    # It began first, so it stands first, with how long it is over.
    assert page.locator(".wall-item").first.get_attribute("data-alarm") == (
        "acknowledged"
    )
    assert re.fullmatch(r"\+4\d:\d\d", row.locator(".wall-time").inner_text())
    assert page.evaluate(WALL)["cut"] == []
