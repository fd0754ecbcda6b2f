"""A hold leads: both thermometers in one round, its countdown, and how it stands."""

from tests.browser.conftest import until
from tests.browser.test_screens import problems_of_layout
from tests.browser.test_sums import done, open_step, read, record, typed


def hot(phone, make, ago_min, milk_f, air_f):
    for quantity, value in (("milk_temp_c", milk_f), ("air_space_temp_c", air_f)):
        told = {"typed": str(value), "typed_unit": "F", "step": "hold"}
        read(phone, make, ago_min, quantity, (value - 32) / 1.8, **told)


def hold_begun(phone, ago_min=20):
    make = phone.open_make(treatment="pasteurised", equipment={"plant_name": "Quern"})
    read(phone, make, 30, "milk_volume_l", 800.0)
    read(phone, make, 30, "fat_frac", 0.04)
    record(phone, "step_begun", make, ago_min, step="hold", why="entered late")
    return make


def says(phone):
    return " ".join(phone.page.locator(".hold-lead, .hold-says").all_inner_texts())


def test_both_thermometers_stand_first_and_how_it_stands_beside_them(new_phone):
    phone = new_phone()
    make = hold_begun(phone)
    for round_ in range(5):
        hot(phone, make, 20 - 2 * round_, 147.0, 152.0)
    hot(phone, make, 10, 144.8, 152.0)
    open_step(phone, make, "hold")
    phone.page.locator(".hold-lead").wait_for()
    assert "begins again" in says(phone)
    for ago_min in (8.2, 6.3, 4.4, 2.5, 0.6):  # none a gap after the other, nor now
        hot(phone, make, ago_min, 147.0, 152.0)
    until(lambda: "Meets so far" in says(phone), "how the hold stands by now")
    assert "Began again" in says(phone)
    # The first of the five since the dip; up to two minutes have passed by now.
    clocks = """
      const { clock: shown } = await import("/js/format.js");
      return [0, 1, 2].map((min) => shown(nowMs() - (8.2 + min) * 60000));
    """
    card = phone.page.locator(".step-card").inner_text()
    assert any(clock in card for clock in phone.run(clocks))
    assert "the inspector decides" in card
    temps = phone.page.locator(".hold-temps").inner_text()
    assert "Milk" in temps
    assert "Air space" in temps
    lead = phone.page.locator(".hold-lead").bounding_box()
    words = phone.page.locator(".instruction").bounding_box()
    assert lead["y"] < words["y"]
    for width, height in ((412, 839), (360, 740), (320, 568)):
        assert problems_of_layout(phone.page, width, height) == []


def test_one_tap_takes_milk_and_air_of_one_instant(creamery, new_phone):
    phone = new_phone()
    make = hold_begun(phone, 1)
    open_step(phone, make, "hold")
    phone.page.locator(".foot .primary", has_text="milk and air space").tap()
    phone.page.locator(".keys").wait_for()
    typed(phone, "64")
    done(phone)
    phone.page.locator("h2", has_text="Air").wait_for()
    typed(phone, "67")
    done(phone)
    phone.page.locator(".hold-lead").wait_for()
    phone.sent()
    taken = [
        event
        for event in creamery.events()
        if event["data"].get("quantity") in ("milk_temp_c", "air_space_temp_c")
    ]
    milk, air = taken
    assert milk["data"]["quantity"] == "milk_temp_c"
    assert milk["at_ms"] + milk["off_ms"] == air["at_ms"] + air["off_ms"]
    assert air["entered_ms"] > milk["entered_ms"]
