"""What stands stops the work on the phone: said there, and decided by who may."""

import pytest

from tests.browser.conftest import until
from tests.browser.test_pin import PIN, press, say, tap, type_pin
from tests.browser.test_screens import problems_of_layout, show
from tests.browser.test_sums import open_step, read, record

TEST = {"step": "receive"}


def milk_tested(phone, result):
    """Open a make whose milk was taken in and tested half an hour ago."""
    make = phone.open_make(gates=True)
    record(phone, "step_begun", make, 40, step="receive")
    read(phone, make, 35, "drug_test", result, **TEST)
    record(phone, "step_ended", make, 30, step="receive", why="entered late")
    return make


def words(phone, within="main"):
    return phone.page.locator(within).inner_text()


@pytest.mark.everyday
def test_a_positive_test_stops_the_pump_until_a_maker_decides(creamery, new_phone):
    phone = new_phone()
    make = milk_tested(phone, "positive")
    open_step(phone, make, "to_vat")
    # Seen: it stood in the step and in the bar at once. It is one matter on each
    # screen, and no alert beside it.
    phone.page.locator(
        ".alarm-bar", has_text="drug residue test is positive"
    ).wait_for()
    button = phone.page.locator(".foot .primary")
    assert "Stopped" in button.inner_text()
    assert words(phone, "#app").count("drug residue test is positive") == 1
    phone.page.locator(".alarm-silence").tap()
    phone.page.locator(".step-card .matter").wait_for()
    assert words(phone, "#app").count("drug residue test is positive") == 1
    for place in ("now", "live"):
        show(phone, place)
        until(lambda: "drug residue test is positive" in words(phone), place)
    show(phone, f"make/{make}")
    button.tap()
    say(phone, "What is done?")
    assert problems_of_layout(phone.page, 412, 839) == []
    phone.page.locator(".row", has_text="confirmed test was negative").tap()
    phone.page.locator("textarea, input[type=text]").first.fill("Plate test 12.")
    phone.page.locator(".foot .primary", has_text="Decide").tap()
    say(phone, "has no PIN yet")
    for _ in range(2):
        type_pin(phone, PIN)
        press(phone)
        phone.page.wait_for_timeout(300)
    say(phone, "Decided by Mara")
    phone.sent()
    decided = [one for one in creamery.events() if one["kind"] == "matter_decided"]
    assert [one["data"]["way"] for one in decided] == ["confirmed_negative"]
    tap(phone, "‹ Back")
    phone.page.locator(".foot .primary", has_text="Begin").wait_for()
    show(phone, f"make/{make}/record")
    say(phone, "What stands")


def test_a_helper_with_no_network_is_refused_with_words_and_loses_nothing(new_phone):
    phone = new_phone("Tove", "helper")
    phone.kept_offline()
    maker = new_phone()
    make = milk_tested(maker, "positive")
    maker.sent()
    phone.run('sync.kick("asked")')
    phone.until("state.board.value?.makes.length === 1", "the make to arrive")
    phone.context.set_offline(True)
    refused = phone.run(
        """
        await actions.openMake(args[0]);
        try {
          await record("step_begun", {make: args[0], data: {step: "to_vat"}});
        } catch (problem) {
          return problem.problems;
        }
        return null;
        """,
        make,
    )
    (problem,) = refused
    assert problem["limit"] == {
        "matter": "drug_test",
        "key": "matter.drug_test_positive",
        "role": "maker",
    }
    show(phone, f"make/{make}/matters/drug_test")
    say(phone, "It takes the role maker to decide.")
    show(phone, "look")
    say(phone, "The drug residue test is positive. The role maker may decide.")
