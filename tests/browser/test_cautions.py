"""Cautions on a phone: read to their end before a step, in nobody's way beside it."""

import pytest

from tests.browser.conftest import until
from tests.browser.test_screens import show
from tests.browser.test_second_touch import settled

SMALL = {"width": 320, "height": 568}
GUARD_MS = 400  # pressed again sooner, it is a bounce
ENTRIES = "return state.view.value.log.map((line) => [line.kind, line.by])"


def at_step(phone, key):
    """Show a make whose milk was tested and whose steps before one were skipped."""
    make = phone.open_make(vat="Vat 2")
    skip = """
      const test = { quantity: "drug_test", value: "negative" };
      await record("reading_taken", { make: args[0], data: test });
      for (const { key } of state.recipes.value[0].steps) {
        if (key === args[1]) break;
        const data = { step: key, why: "Done before" };
        await record("step_skipped", { make: args[0], data });
      }
    """
    phone.run(skip, make, key)
    show(phone, f"make/{make}")
    return make


def hazards(phone):
    return phone.page.locator(".cautions li b").all_inner_texts()


def kinds(phone):
    return [kind for kind, _ in phone.run(ENTRIES)]


@pytest.mark.everyday
def test_a_step_begins_only_once_its_last_caution_was_in_sight(new_phone):
    phone = new_phone()
    phone.page.set_viewport_size(SMALL)
    at_step(phone, "drain_jacket")
    further = phone.page.locator(".foot .primary", has_text="More below")
    begin = phone.page.locator(".foot .primary", has_text="Begin now")
    further.wait_for()
    assert "HOT WATER RUNS OUT" in hazards(phone)
    assert phone.page.locator(".cautions svg").count() >= len(hazards(phone))
    for _ in range(20):  # as many as the letters of this machine need
        if begin.count():
            break
        further.tap()
        phone.page.wait_for_timeout(GUARD_MS)
        settled(phone)
    begin.tap()
    phone.page.locator(".primary", has_text="Finish").wait_for()
    assert kinds(phone)[:2] == ["step_begun", "cautions_seen"]
    assert phone.page.locator(".cautions").count() == 0


def test_who_takes_over_the_phone_sees_them_beside_work_that_runs(new_phone):
    phone = new_phone()
    new_phone("Tove", "helper")
    make = at_step(phone, "press_1")
    phone.page.locator(".foot .primary", has_text="Begin now").tap()
    phone.page.locator(".primary", has_text="gauge").wait_for()
    phone.sent()
    phone.reload()
    has_tove = "state.people.value.some((one) => one.name === 'Tove')"
    phone.until(has_tove, "the helper's name")
    helper = phone.run(
        """
        const { id } = state.people.value.find((one) => one.name === "Tove");
        await actions.setPerson(id);
        return id;
        """
    )
    show(phone, f"make/{make}")
    band = phone.page.locator(".caution-band")
    band.wait_for()
    assert phone.page.locator(".foot .primary", has_text="gauge").is_visible()
    band.tap()
    phone.page.locator(".caution-band li", has_text="COMPRESSED AIR").wait_for()
    band.get_by_text("I have read this").tap()
    band.wait_for(state="detached")
    until(lambda: ["cautions_seen", helper] in phone.run(ENTRIES), "the entry")


def test_the_pad_of_a_titration_has_its_caution_above_the_keys(new_phone):
    phone = new_phone()
    make = at_step(phone, "set")
    show(phone, f"make/{make}/reading/-/titratable_acidity_frac")
    band = phone.page.locator(".keypad .caution-band", has_text="LYE")
    band.tap()
    band.get_by_text("I have read this").tap()
    band.wait_for(state="detached")
    assert kinds(phone)[0] == "cautions_seen"
