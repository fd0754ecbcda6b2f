"""Signing a phone out on its own screen, with entries that are not sent yet."""

import os

NOTE = 'return record("note_added", {make: args[0], data: {text: "Still here"}})'


def tap(phone, words):
    phone.page.get_by_role("button", name=words).first.tap()


def shot(phone, name):
    if os.environ.get("VATSIDE_SHOTS"):
        phone.page.screenshot(path=f"{os.environ['VATSIDE_SHOTS']}/{name}.png")


def test_a_phone_is_signed_out_and_keeps_what_it_has_not_sent(creamery, new_phone):
    phone = new_phone(name="Mara", role="maker")
    make = phone.open_make()
    phone.sent()
    phone.page.evaluate("location.hash = '#/device'")
    phone.context.route("**/sync/push", lambda route: route.abort())
    phone.run(NOTE, make)
    tap(phone, "Sign out of this phone")
    leaving = phone.page.get_by_role("button", name="Sign out", exact=True)
    assert leaving.is_disabled()
    shot(phone, "sign-out-waits")
    tap(phone, "Leave them on this phone")
    tap(phone, "Sign out, 1 entry stays here")
    phone.until("state.me.value === null", "the phone to belong to nobody")
    phone.page.get_by_role("button", name="Join").wait_for()
    shot(phone, "signed-out")
    phone.reload()
    assert phone.run("return (await db.pending()).count") == 1
    phone.context.unroute("**/sync/push")
    phone.pair(creamery.invite("Mara", "maker"))
    phone.sent()
    texts = [row["data"].get("text") for row in creamery.events()]
    assert "Still here" in texts
