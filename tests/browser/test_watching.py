"""Who watches: Live, Now and Make show each make's day and use their space."""

import pytest

from tests.browser.conftest import until
from tests.browser.test_screens import TOO_WIDE, show
from tests.browser.test_wall import picture
from tests.browser.test_wall import room as room


@pytest.mark.everyday
def test_live_fills_a_desk_and_shows_each_vat_s_day_curve_and_hour(room, new_phone):
    desk = new_phone("Olga", "owner")
    page = desk.page
    page.set_viewport_size({"width": 1440, "height": 900})
    show(desk, "live")
    north = page.locator(".live-card", has_text="North")
    north.locator(".small-curve svg").wait_for()
    picture(page, "live-1440")
    assert "4.2" in north.locator(".small-curve svg").get_attribute("aria-label")
    assert "Milk: now" in north.locator(".day-band").get_attribute("aria-label")
    hour = north.locator(".live-next").inner_text()
    assert "Drain" in hour
    assert "Turn 40" in hour
    assert "Cut" not in hour
    # The cards have the whole width, and none stands alone in a half-empty row.
    wide = page.locator(".live-cards").bounding_box()
    boxes = [one.bounding_box() for one in page.locator(".live-card").all()]
    right = max(box["x"] + box["width"] for box in boxes)
    assert abs(right - (wide["x"] + wide["width"])) <= 1
    assert len({box["y"] for box in boxes}) == 1
    # The places at its side are whole, in three groups.
    assert page.locator(".side-nav h2").all_inner_texts() == [
        "Work",
        "Watching",
        "Setting up",
    ]
    assert page.locator(".side-nav").evaluate("(one) => one.scrollHeight") <= 900
    page.set_viewport_size({"width": 360, "height": 740})
    page.wait_for_timeout(300)
    picture(page, "live-360")
    assert page.evaluate(TOO_WIDE) == []


def test_now_counts_down_large_and_shows_each_make_s_day(room):
    page = room.page
    page.set_viewport_size({"width": 360, "height": 740})
    show(room, "now")
    page.locator(".card-band .day-band").first.wait_for()
    picture(page, "now-360")
    sizes = page.locator(".due-time").evaluate_all(
        "(all) => all.map((one) => parseFloat(getComputedStyle(one).fontSize))"
    )
    assert len(sizes) >= 3
    assert min(sizes) >= 44  # 22 minutes of arc at 0.8 m
    assert page.evaluate(TOO_WIDE) == []
    assert "Milk: now" in page.locator(".card-band .day-band").last.get_attribute(
        "aria-label"
    )
    show(room, "menu")
    picture(page, "menu-360")
    assert page.locator(".menu-groups h2").all_inner_texts() == [
        "Work",
        "Watching",
        "Setting up",
    ]


def test_the_day_on_make_costs_no_more_than_a_line(room):
    page = room.page
    page.set_viewport_size({"width": 360, "height": 740})
    show(room, f"make/{room.first}")
    read = page.get_by_role("button", name="I have read this")
    page.locator(".make, .cautions").first.wait_for()
    until(lambda: page.locator(".step-title").count() or read.count(), "the step")
    if read.count():
        page.wait_for_timeout(1200)
        read.tap()
    strip = page.locator(".make-band")
    strip.locator(".day-band").wait_for()
    picture(page, "make-360-strip")
    assert strip.bounding_box()["height"] <= 28
    assert strip.locator(".day-band").bounding_box()["height"] <= 28
    assert page.evaluate(TOO_WIDE) == []
