"""The milk's treatment is chosen when a make is opened, and leads it from then on."""

from tests.browser.conftest import until
from tests.browser.test_new_make import begin, opened, row
from tests.browser.test_screens import problems_of_layout, show
from tests.browser.test_sums import done, typed


def steps(phone, make):
    show(phone, f"make/{make}/steps")
    phone.page.locator(".sheet .row").first.wait_for()
    return phone.page.locator(".sheet").inner_text()


def milk(phone, make):
    show(phone, f"make/{make}/milk")
    phone.page.locator("h1", has_text="The milk").wait_for()
    return phone.page.locator(".sheet .scroll")


def test_the_usual_way_stands_first_and_none_is_taken_without_a_tap(new_phone):
    phone = new_phone()
    show(phone, "new")
    row(phone, "Washed-curd wheel")
    typed(phone, "1000")
    done(phone)
    keys = phone.page.get_by_role("group", name="How is the milk treated?")
    keys.get_by_role("button").first.wait_for()
    told = keys.get_by_role("button").all_inner_texts()
    assert [text.split("\n")[0] for text in told] == [
        "Heat-treated, not pasteurised · usual here",
        "To be pasteurised",
        "Raw",
    ]
    assert keys.locator("[aria-pressed=true]").count() == 0
    assert problems_of_layout(phone.page, 412, 839) == []
    row(phone, "usual here")
    make = opened(phone)
    assert "Mark the chart" not in steps(phone, make)
    assert "Curing: at least 60 days" in milk(phone, make).inner_text()


def test_a_maker_changes_the_treatment_with_why_and_the_steps_follow(new_phone):
    phone = new_phone()
    begin(phone, way="Raw")
    make = opened(phone)
    assert "Warm the milk to set" in steps(phone, make)
    sheet = milk(phone, make)
    assert "made with raw milk" in sheet.inner_text()
    row(phone, "^To be pasteurised")
    phone.page.get_by_role("textbox").fill("The buyer asks for it.")
    row(phone, "Change it")
    until(lambda: "not decided" in sheet.inner_text(), "what the milk is by then")
    assert "The buyer asks for it." in sheet.inner_text()
    assert problems_of_layout(phone.page, 412, 839) == []
    assert "Mark the chart" in steps(phone, make)
    show(phone, f"make/{make}/record")
    phone.page.get_by_text("Treatment changed: to be pasteurised").wait_for()
