"""A make that cannot be shown stands among the others, and can be ended there."""

import json
import os
import uuid

from tests.browser.conftest import ROOT
from tests.browser.test_screens import TOO_WIDE, show
from tests.core.builders import Phone, at

RECIPE = json.loads((ROOT / "server/recipes/washed-wheel.json").read_text("utf-8"))
MAKE = "0193a5b0-0000-7000-8000-00000000000a"


def accepted(creamery, event):
    """Get an entry into the log that its check refuses: a person may say so."""
    me = creamery.ask("GET", "/me")
    event |= {"device": me["device"], "person": me["person"]["id"]}
    event |= {"id": str(uuid.uuid4())}
    (told,) = creamery.ask("POST", "/sync/push", {"events": [event]})["results"]
    assert told["st"] == "needs_look"
    (row,) = creamery.ask("GET", "/needs-look")
    settled = {"as": "accept", "why": "maker_decides"}
    creamery.ask("POST", f"/needs-look/{row['n']}/settle", settled)


def old_opening():
    recipe = json.loads(json.dumps(RECIPE))
    recipe["steps"][0]["readings"] = None
    return Phone(make=MAKE).opened(recipe=recipe, name="Old vat", vat="Vat 2")


def picture(page, name):
    if os.environ.get("PICTURES"):
        page.screenshot(path=f"{os.environ['PICTURES']}/{name}.png")


def test_it_is_named_beside_the_others_and_gone_once_it_is_abandoned(
    creamery, new_phone
):
    phone = new_phone("Mara")
    good = phone.open_make(name="Morning make")
    newer = Phone(make=good).event("note_added", 1)
    accepted(creamery, {**newer, "kind": "rind_washed", "at_ms": at(1)})
    accepted(creamery, old_opening())
    phone.sent()
    phone.until("state.board.value?.broken.length === 1", "the make to be named")
    page = phone.page
    show(phone, "now")
    line = page.locator(".alert", has_text="Old vat")
    assert "Vat 2" in line.inner_text()
    assert "steps.receive.readings" in line.inner_text()
    assert page.locator(".card", has_text="Morning make").count() == 1
    assert "1 entry of a newer version" in page.locator(".unread").inner_text()
    page.set_viewport_size({"width": 320, "height": 568})
    # No path of a field, however long, makes the screen wider than it is.
    assert page.evaluate(TOO_WIDE) == []
    picture(page, "broken-now")
    line.get_by_text("Open it").tap()
    page.get_by_text("Work on by hand").wait_for()
    picture(page, "broken-make")
    page.get_by_text("Record", exact=True).tap()
    page.get_by_text("Entry that cannot be read").wait_for()
    picture(page, "broken-record")
    phone.record("make_abandoned", make=MAKE, data={"why": "milk_bad"})
    phone.until("state.board.value?.broken.length === 0", "the line to go")
    show(phone, "now")
    page.locator(".card", has_text="Morning make").wait_for()
    assert page.locator(".alert", has_text="Old vat").count() == 0
