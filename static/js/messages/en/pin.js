// PINs, and how an act was proved. Not brought with the page: see en/index.js.

export const PIN = {
  "pin.opening": "One moment…",
  "pin.missing":
    "The PIN pad is not on this phone yet. Open it once where the server is in reach.",
  "pin.of": "PIN of {name}",
  "pin.enter": "PIN of {name}",
  "pin.choose":
    "{name} has no PIN yet. Choose 4 to 8 digits; more are harder to guess. It signs and lifts holds; nobody can look it up.",
  "pin.again": "The same digits once more.",
  "pin.before": "The PIN that {name} has now.",
  "pin.next": "Next",
  "pin.keep": "Keep this PIN",
  "pin.done": "The PIN is set. Other phones learn it when they next reach the server.",
  "pin.differs": "Those were not the same digits. Choose once more.",
  "pin.forgotten":
    "Forgotten? The owner resets it under People; for an owner another owner does, or the box with the command vatside reset-pin.",
  "pin.checking": "Checking…",
  "pin.digits.one": "1 digit typed",
  "pin.digits.many": "{n} digits typed",
  "pin.peek": "Show the digits",
  "pin.wrong.one": "Wrong PIN. 1 more try before a wait.",
  "pin.wrong.many": "Wrong PIN. {n} more tries before a wait.",
  "pin.wait": "Too many wrong PINs. Wait {span}.",
  "pin.locked":
    "Ten wrong PINs on this phone. Only the server checks them now: go where it is in reach, or let the owner reset the PIN.",
  "pin.no_server":
    "The server is not in reach, and this needs it once. Nothing is lost: it can be done later.",
  "pin.not_here":
    "{name} has no PIN yet. Set it on the phone of {name}, under Who; or the owner allows it for half an hour, under People.",
  "pin.plain":
    "At this address others on the network could read the PIN. The https address keeps it secret.",
  "pin.hurry": "Hold now, without PIN",
  "pin.hurry_detail":
    "Without it: recorded for {name}, whose phone this is, and marked as not proved.",
  "proved.pin": "Proved by PIN",
  "proved.phone": "Not proved by PIN; recorded on the person’s own phone",
  "proved.none": "Not proved; recorded before there were PINs",
  "proved.old_pin": "Signed with a PIN that had been changed",
  "proved.accepted": "Not proved; taken in after a look",
  "people.pin": "Let them choose a new PIN",
  "people.pin_detail": "The PIN until now ends",
  "people.pin_until": "{name} may choose a PIN on any phone until {at}.",
  "field.pin": "The PIN",
  "field.proof": "The proof",
  "problem.pin_not_digits": "A PIN is digits only.",
  "problem.pin_too_short": "A PIN has at least {limit} digits.",
  "problem.pin_too_long": "A PIN has at most {limit} digits.",
  "problem.pin_too_easy":
    "That PIN is among the first that anybody tries. Choose another.",
  "problem.not_proved": "It came without the person’s PIN.",
  "problem.bad_proof":
    "Its proof does not fit it: it was changed, or another person signed.",
  "problem.old_pin":
    "It was signed with a PIN that had been changed. Sign once more with the new one.",
  "problem.unknown_pin":
    "The server does not know the PIN that signed it. Set the PIN again and sign once more.",
  "error.wrong_pin": "The PIN is wrong.",
  "error.no_pin": "This person has no PIN yet.",
  "error.no_pin_for_role": "Only makers and owners have a PIN.",
  "error.pin_not_here":
    "Set it on this person’s own phone, or let the owner allow it under People.",
  "error.own_pin":
    "Another owner resets it, or the box with the command vatside reset-pin.",
  "error.too_many_pins": "Too many wrong PINs. Wait a little.",
  "error.not_a_key": "The phone made a key that cannot be used. Try again.",
};
