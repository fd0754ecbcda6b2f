"""Results of a laboratory come days later, and into a make that is closed."""

from tests.browser.conftest import until
from tests.browser.test_new_make import row
from tests.browser.test_screens import problems_of_layout, read_cautions, show
from tests.browser.test_sums import done, typed


def results(phone, make):
    """Return {(quantity, place): value} of the make's standing readings."""
    lines = phone.run("return ask.record({ make: args[0] })", make)
    return {
        (line["data"]["quantity"], line["data"].get("place")): line["data"]["value"]
        for line in lines
        if line["kind"] == "reading_taken"
    }


def test_a_closed_make_takes_results_of_the_laboratory(new_phone):
    phone = new_phone()
    make = phone.open_make(milk_l=1000)
    phone.record("make_closed", make=make, data={})
    show(phone, f"make/{make}")
    read_cautions(phone)
    row(phone, "From the laboratory")
    assert problems_of_layout(phone.page, 412, 839) == []
    row(phone, "Phosphatase of the milk")
    typed(phone, "20")
    done(phone)
    row(phone, "Phosphatase: phenol of 0.25 g cheese, large")
    typed(phone, "1.5")
    done(phone)
    row(phone, "Phosphatase test")
    row(phone, "Negative")
    done(phone)
    wanted = {
        ("milk_phosphatase_mu_l", None): 20,
        ("cheese_phosphatase_ug", "large"): 1.5,
        ("phosphatase_test", None): "negative",
    }
    until(lambda: results(phone, make) == wanted, "the three results")
    show(phone, f"make/{make}/record")
    phone.page.get_by_text("Phosphatase of the milk 20\u00a0mU/L").wait_for()
    phone.page.get_by_text("1.5\u00a0µg").wait_for()
    phone.page.get_by_text("Phosphatase test Negative").last.wait_for()
