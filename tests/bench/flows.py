"""Flows of a few taps, counted on the page: see tests.bench.taps."""

from tests.bench.tapper import RECIPE, Counted
from tests.browser.conftest import Phone, until

WEIGHED = "Wheel mass"  # as the page calls it
SIZES = [{"size": "small", "count": 13}, {"size": "large", "count": 4}]
# Everything before a step is over; what is over needs no detail here.
BEFORE = """
  const test = { quantity: "drug_test", value: "negative" };
  await record("reading_taken", { make: args[0], data: test });
  for (const step of state.recipes.value[0].steps) {
    if (step.key === args[1]) break;
    await record("step_begun", { make: args[0], data: { step: step.key, why: "x" } });
    await record("step_ended", { make: args[0], data: { step: step.key, why: "x" } });
  }
"""


def hand_at(phone, address):
    """Open an address of the app; return the hand that is counted from there."""
    phone.run("location.hash = args[0]", "#/" + address)
    phone.page.locator(".foot .primary").wait_for()
    return Counted(phone.page)


def before(phone, key):
    """Open a make whose steps are over up to one; return its id."""
    make = phone.open_make(vat="Round vat", moulds=SIZES)
    phone.run(BEFORE, make, key)
    return make


def owner(creamery, play, folder):
    """Count from the owner's link on a new phone to the first step begun."""
    phone = Phone(play, folder / "owner", f"{creamery.url}/#/pair/{creamery.code()}")
    phone.open()
    hand = Counted(phone.page)
    hand.fill("Your name", "Orla Quern")
    hand.tap(".foot .primary", "Join")
    hand.tap("button", "Start a new make")
    hand.tap(".choice", RECIPE["title"]["en"])
    hand.sees(".keys")
    for digit in "600":
        hand.tap(".keys .key", digit)
        hand.wait(200)
    hand.tap(".foot .primary", "Next")
    hand.tap(".choice", "To be pasteurised")
    hand.tap(".foot .primary", "Start this make")
    begin(hand)
    phone.close()
    return hand.taps.total()


def begin(hand):
    """Begin the step at hand by its large button, past its cautions."""
    while True:
        hand.sees(".foot .primary-does")
        words = hand.read(".foot .primary-does")
        hand.tap(".foot .primary", words)
        if words.startswith(("Begin", "Read. Begin")):
            return
        until(lambda was=words: hand.read(".foot .primary-does") != was, "the next")


def helper(creamery, play, folder):
    """Count from a maker's phone at the press to a helper's press timer running."""
    phone = Phone(play, folder / "helper", creamery.url)
    phone.open()
    creamery.invite("Tove", "helper")
    phone.pair(creamery.invite("Mara", "maker"))
    make = before(phone, "press_1")
    phone.sent()
    hand = hand_at(phone, f"make/{make}")
    hand.tap(".status-button", "Mara")
    hand.tap(".choice", "Tove")
    begin(hand)
    hand.sees(".countdown")
    phone.close()
    return hand.taps.total()


def weights(creamery, play, folder):
    """Count three wheels of a size that are weighed and saved."""
    phone = Phone(play, folder / "weights", creamery.url)
    phone.open()
    phone.pair(creamery.invite("Mara", "maker"))
    make = before(phone, "unmould")
    phone.record("step_begun", make=make, data={"step": "unmould"})
    hand = hand_at(phone, f"make/{make}")
    hand.tap(".reading", having=WEIGHED, is_last=True)
    hand.tap(".row", having="Large wheel")
    for n, mass in enumerate(("8.05", "8.1", "8.1")):
        hand.sees(".keypad h2", f"Large wheel: wheel {n + 1}")
        if not hand.count(f"[data-offer='{mass}0']"):
            for digit in mass:
                hand.tap(".keys .key", digit)
            hand.tap(".foot .primary", "Save")
        else:
            hand.tap(f"[data-offer='{mass}0']")
    hand.sees(".keypad h2", "Large wheel: wheel 4")
    phone.close()
    return hand.taps.total()
