"""A maker signs with a PIN, with no network, and the server knows that it is theirs."""

import pytest

from server.config import DATABASE_NAME
from tests.browser.conftest import until

PIN = "40718263"
# Everything that the phone keeps, as text.
KEPT = """
  const opened = await new Promise((resolve) => {
    const asked = indexedDB.open("vatside");
    asked.onsuccess = () => resolve(asked.result);
  });
  const all = {};
  for (const name of opened.objectStoreNames) {
    all[name] = await new Promise((resolve) => {
      const asked = opened.transaction(name).objectStore(name).getAll();
      asked.onsuccess = () => resolve(asked.result);
    });
  }
  opened.close();
  return JSON.stringify([all, {...localStorage}]);
"""


def say(phone, text):
    return phone.page.get_by_text(text).first.wait_for()


def tap(phone, text):
    phone.page.get_by_role("button", name=text, exact=True).first.tap()


def type_pin(phone, pin):
    for digit in pin:
        phone.page.get_by_role("button", name=digit, exact=True).tap()
        phone.page.wait_for_timeout(90)  # sooner, it is a key that bounces


def press(phone):
    phone.page.locator(".pin-pad .foot .primary").tap()


def begin_to_sign(phone, make):
    phone.page.evaluate(f"location.hash = '#/make/{make}/batch'")
    tap(phone, "Sign the record")
    tap(phone, "Sign")


def begin_to_hold(phone, make):
    phone.page.evaluate(f"location.hash = '#/make/{make}/batch'")
    phone.page.locator(".row", has_text="Put on hold").first.tap()
    phone.page.locator(".choice").first.tap()
    phone.page.locator(".foot .primary", has_text="Put it on hold").tap()


def entries(creamery, kind):
    return [one for one in creamery.events() if one["kind"] == kind]


@pytest.mark.everyday
def test_a_pin_is_set_on_the_way_and_signs_with_no_network(creamery, new_phone):
    phone = new_phone()
    phone.kept_offline()
    make = phone.open_make()
    phone.sent()
    begin_to_sign(phone, make)
    say(phone, "has no PIN yet")
    type_pin(phone, "1234")
    press(phone)
    say(phone, "among the first that anybody tries")
    type_pin(phone, PIN)
    press(phone)
    say(phone, "The same digits once more")
    type_pin(phone, PIN)
    press(phone)
    until(lambda: entries(creamery, "signed_off"), "the record to be signed")

    phone.context.set_offline(True)
    phone.reload()
    phone.until('state.core.value === "ready"', "the core, from what the phone keeps")
    begin_to_sign(phone, make)
    type_pin(phone, "9021")
    press(phone)
    say(phone, "4 more tries before a wait")
    type_pin(phone, PIN)
    press(phone)
    phone.until("state.unsent.value === 1", "the signature to be kept")
    phone.context.set_offline(False)
    phone.sent()
    signed = entries(creamery, "signed_off")
    assert [one["proof"]["by"] for one in signed] == ["pin", "pin"]
    assert signed[0]["proof"]["sig"] != signed[1]["proof"]["sig"]
    assert creamery.ask("GET", "/needs-look") == []
    for pin in (PIN, "9021", "1234"):
        assert f'"{pin}"' not in phone.run(KEPT)
    assert PIN.encode() not in (creamery.data / DATABASE_NAME).read_bytes()


def test_wrong_pins_lock_the_pad_over_a_reload_and_a_hold_need_not_wait(
    creamery, new_phone
):
    phone = new_phone()
    make = phone.open_make()
    phone.page.evaluate("location.hash = '#/pin'")
    for text in ("has no PIN yet", "The same digits once more"):
        say(phone, text)
        type_pin(phone, PIN)
        press(phone)
    say(phone, "The PIN is set")
    begin_to_hold(phone, make)
    for left in ("4 more tries", "3 more tries", "2 more tries", "1 more try", "Wait"):
        type_pin(phone, "9021")
        press(phone)
        say(phone, left)
    phone.reload()
    begin_to_hold(phone, make)
    say(phone, "Too many wrong PINs. Wait")
    tap(phone, "Hold now, without PIN")
    phone.until("state.view.value.make.holds.length === 1", "the hold to be placed")
    phone.sent()
    (hold,) = entries(creamery, "hold_placed")
    assert hold["proof"] == {"by": "phone"}
    phone.page.evaluate(f"location.hash = '#/make/{make}/record'")
    say(phone, "Not proved by PIN")
