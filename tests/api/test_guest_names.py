"""A name in any text of any kind of entry reaches no guest."""

import json

import pytest

from server.core.log.kinds.event import check_event
from server.core.log.kinds.table import KINDS
from tests.alarm.floor import add
from tests.api.conftest import PairedPhone
from tests.core import builders
from tests.sync.phones import NOON_MS, a_uuid, note

WRITTEN = ("mAREN", "okéllo", "OLIVE")
DAY_MS = 86_400_000


@pytest.fixture
def owner(pair):
    return pair("owner", "Olive Quern")


@pytest.fixture
def maker(pair):
    return pair("maker", "Maren Okello")


def with_names(field):
    """Return a sound value of a field, a name in it wherever there is a text."""
    form = field["type"]
    if form in ("text", "key"):
        name = WRITTEN[len(field["name"]) % len(WRITTEN)]
        return f"{name} 7"[: field["high"]]
    if form == "recipe":
        recipe = builders.recipe()
        recipe["title"] = {"en": "Olive's wheel", "Maren": "x"}
        for step in recipe["steps"]:
            step["title"] = {"en": f"Okello {step['key']}"}
            step["do"] = [{"en": "Ask maren."}]
        return recipe
    return {
        "number": field["low"] or (field["high"] or 0) / 2,
        "int": field["low"] or 1,
        "bool": True,
        "choice": (field["choices"] or [None])[0],
        "treatment": "pasteurised",
        "quantity": "milk_temp_c",
        "reading": 31.5,
        "equipment": "OKELLO",
        "moulds": [{"size": "small", "count": 3}],
        "options": {},
        "names": ["maren's", "OKELLO/olive"],
        "set": {},  # what a correction sets, see below
        "equipment_of_make": {
            "vat": "maren's",
            "Olive": "x",
            "typed": {"Okello": ["1", "OLIVE"]},
        },
    }[form]


def everything(maker, make):
    """Return one entry of every kind, in an order in which all are taken."""
    found = []
    for seq, kind in enumerate(KINDS, start=1):
        data = {field["name"]: with_names(field) for field in KINDS[kind]["fields"]}
        if kind == "entry_corrected":
            data["set"] = {"name": "Vat of maren", "vat": "OLIVE"}
        entry = note(maker.device, seq, maker.person, kind=kind, make=make)
        found.append(entry | {"data": data, "v": KINDS[kind]["v"]})
    by_kind = {entry["kind"]: entry for entry in found}
    for kind, entry in by_kind.items():
        if KINDS[kind]["ref"] == "required":
            about = "note_added" if kind == "entry_struck" else "make_opened"
            entry["ref"] = by_kind[about]["id"]
    return found


def test_every_text_of_every_kind_is_masked_for_a_guest(app, owner, maker):
    make = a_uuid()
    sent = everything(maker, make)
    assert {one["kind"] for one in sent} == set(KINDS)
    assert [one for one in sent if check_event(one)] == []
    with app.app_context():
        add(*sent)  # whoever may record what is another matter
    wanted = {"name": "Vet", "makes": [make], "until_ms": NOON_MS + 30 * DAY_MS}
    token = owner.post("/links", wanted).json["url"].partition("/#/guest/")[2]
    guest = PairedPhone(app.test_client(), "", "")
    guest.post("/guest", {"token": token})
    answers = [guest.get("/guest")] + [
        guest.get(f"/guest/makes/{make}/{part}") for part in ("view", "record", "curve")
    ]
    paired_read = maker.get(f"/makes/{make}/record").text.casefold()
    for answer in answers:
        assert answer.status_code == 200
        text = json.dumps(answer.json, ensure_ascii=False).casefold()
        for secret in ("maren", "okello", "okéllo", "olive", "quern", maker.person):
            assert secret not in text, (secret, text[text.index(secret) - 80 :][:120])
    assert "okéllo" in paired_read or "maren" in paired_read
    shown = {row["kind"] for row in answers[2].json}
    # What is filed elsewhere (tanks) or is no line of the record is not shown.
    assert shown >= {"note_added", "hold_placed", "signed_off", "equipment_set"}
