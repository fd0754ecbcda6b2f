"""What is due together is one round of entry, with what was just read one tap away."""

import pytest

from tests.browser.conftest import until
from tests.browser.test_screens import press, show


def titled(phone, title):
    until(lambda: phone.page.locator(".keypad h2").inner_text() == title, title)


def newest(phone):
    return phone.run("return state.view.value.log[0].data")


def save(phone):
    phone.page.locator(".foot .primary").tap()


@pytest.mark.everyday
def test_what_was_saved_leads_to_the_next_and_the_last_one_back(new_phone):
    phone = new_phone()
    make = phone.open_make()
    phone.record("step_begun", make=make, data={"step": "receive"})
    show(phone, f"make/{make}/reading/receive/drug_test")
    phone.page.get_by_role("button", name="Negative").tap()
    save(phone)
    titled(phone, "Milk temperature")
    assert phone.page.get_by_text("Then: age of the milk").is_visible()
    assert phone.page.locator(".key-sign").count() == 0  # milk below 0 is ice
    press(phone, "4.2")
    save(phone)
    titled(phone, "Age of the milk")
    press(phone, "14")
    save(phone)
    phone.page.locator(".step-title").wait_for()
    log = phone.run("return state.view.value.log.map((line) => line.data)")
    read = {row["quantity"]: row["typed"] for row in log if "quantity" in row}
    told = {"drug_test": "negative", "milk_temp_c": "4.2", "milk_age_h": "14"}
    assert read == told


def test_the_last_value_is_shown_with_its_age_and_saved_by_one_tap(new_phone):
    phone = new_phone()
    make = phone.open_make()
    phone.record("step_begun", make=make, data={"step": "rest"})
    read = {"quantity": "milk_temp_c", "value": 4.1, "typed": "4.1", "step": "rest"}
    phone.record("reading_taken", make=make, data=read)
    show(phone, f"make/{make}/reading/rest/milk_temp_c")
    offer = phone.page.locator("[data-offer='4.1']")
    offer.wait_for()
    assert offer.inner_text().startswith("Save 4.1\u00a0°C, as ")
    press(phone, "4")
    assert offer.count() == 0  # who types has read another
    press(phone, "⌫")
    offer.tap()
    phone.page.locator(".step-title").wait_for()
    assert newest(phone)["typed"] == "4.1"
    kinds = phone.run("return state.view.value.log.map((line) => line.kind)")
    assert kinds.count("reading_taken") == 2


def test_wheels_are_weighed_one_after_another(new_phone):
    phone = new_phone()
    make = phone.open_make(moulds=[{"size": "large", "count": 4}])
    phone.record("step_begun", make=make, data={"step": "unmould"})
    show(phone, f"make/{make}/reading/unmould/wheel_mass_kg")
    for n, mass in enumerate(("8.05", "8.10")):
        titled(phone, f"Large wheel: wheel {n + 1}")
        press(phone, mass)
        save(phone)
    titled(phone, "Large wheel: wheel 3")
    phone.page.get_by_role("button", name="Done weighing").tap()
    phone.page.locator(".step-title").wait_for()
    assert (newest(phone)["typed"], newest(phone)["place"]) == ("8.10", "large")


def test_all_wheels_are_turned_with_their_count(new_phone):
    phone = new_phone()
    make = phone.open_make(moulds=[{"size": "large", "count": 4}])
    phone.record("wheels_moulded", make=make, data={"size": "large", "count": 4})
    phone.record("step_begun", make=make, data={"step": "turn_1"})
    show(phone, f"make/{make}")
    phone.run(
        "(await import('/js/parts/chosen.js')).chooseStep(args[0], 'turn_1')", make
    )
    phone.page.get_by_role("button", name="All 4 wheels are turned").tap()
    until(lambda: newest(phone).get("count") == 4, "the turning")
