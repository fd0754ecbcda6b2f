"""Servers die, answers get lost, backups are restored. No entry may."""

import contextlib
import shutil

import pytest
from playwright.sync_api import Error

NOTE = """
  const made = await record("note_added", {make: args[0], data: {text: args[1]}});
  return made.id;
"""
RESULTS = "**/api/v1/sync/push"


def note_ids(creamery):
    return [one["id"] for one in creamery.events() if one["kind"] == "note_added"]


@pytest.mark.everyday
def test_entries_survive_a_server_killed_between_them(creamery, new_phone):
    phone = new_phone()
    make = phone.open_make()
    made = []
    for round_ in range(4):
        if round_ % 2:
            creamery.kill()
        for n in range(8):
            made.append(phone.run(NOTE, make, f"Round {round_} note {n}"))
        if round_ % 2:
            phone.until('state.net.value === "server_gone"', "word that it is gone")
            creamery.start()
    phone.sent()
    assert note_ids(creamery) == made
    assert phone.run("return state.net.value") == "online"


@pytest.mark.everyday
def test_an_answer_lost_on_the_way_doubles_nothing(creamery, new_phone):
    phone = new_phone()
    make = phone.open_make()
    phone.sent()
    lost = []

    def lose(route):
        lost.append(route.fetch().status)
        # One that is under way when the network heals has been let through.
        with contextlib.suppress(Error):
            route.abort("connectionreset")

    phone.context.route(RESULTS, lose)
    made = [phone.run(NOTE, make, f"Note {n}") for n in range(3)]
    phone.until('state.net.value === "server_gone"', "the loss to be noticed")
    assert lost
    assert lost[0] == 200
    assert phone.run("return (await db.pending()).count") > 0
    phone.context.unroute(RESULTS)
    phone.sent()
    assert note_ids(creamery) == made


@pytest.mark.everyday
def test_a_server_set_back_to_an_older_copy_gets_everything_again(creamery, new_phone):
    one, two = new_phone("Mara"), new_phone("Ivo")
    make = one.open_make()
    one.sent()
    two.run('sync.kick("asked")')
    two.until("state.board.value?.makes.length === 1", "the make to arrive")
    creamery.kill()
    older = creamery.folder / "older"
    shutil.copytree(creamery.data, older)
    creamery.start()
    made = [one.run(NOTE, make, "After the copy"), two.run(NOTE, make, "As well")]
    one.sent()
    two.sent()
    creamery.kill()
    shutil.rmtree(creamery.data)
    shutil.copytree(older, creamery.data)
    creamery.start()
    assert note_ids(creamery) == []
    made.append(one.run(NOTE, make, "After the disaster"))
    for phone in (one, two):
        # A phone looks once a page whether the server still has all of it.
        phone.reload()
        phone.until('state.net.value === "online"', "the exchange")
        phone.until("state.unsent.value === 0", "everything to be offered again")
    one.sent()
    assert sorted(note_ids(creamery)) == sorted(made)


def test_an_entry_that_the_server_puts_aside_is_shown_with_its_reason(
    creamery, new_phone
):
    phone = new_phone("Ivo", role="maker")
    make = phone.open_make()
    phone.sent()
    phone.context.set_offline(True)
    made = phone.run(NOTE, make, "Recorded while a role was taken away")
    person = next(one for one in creamery.ask("GET", "/people") if one["name"] == "Ivo")
    creamery.ask("POST", f"/people/{person['id']}", {"role": "viewer"})
    phone.context.set_offline(False)
    phone.sent()
    phone.until("state.needsLook.value === 1", "it to be shown")
    (row,) = phone.run("return actions.putAside()")
    assert row["id"] == made
    assert row["why"][0]["key"] == "not_allowed"
    assert note_ids(creamery) == []
    # The phone's own view no longer claims it.
    phone.run("return actions.openMake(args[0])", make)
    phone.until(
        'state.view.value.log.every((line) => line.kind !== "note_added")',
        "the view without it",
    )
    creamery.ask("POST", f"/people/{person['id']}", {"role": "maker"})
    phone.run("return actions.sendAgain(args[0])", made)
    phone.sent()
    assert note_ids(creamery) == [made]


def test_a_removed_phone_keeps_its_entries_and_says_so(creamery, new_phone):
    phone = new_phone()
    make = phone.open_make()
    phone.sent()
    device = phone.run("return state.me.value.device")
    creamery.ask("DELETE", f"/devices/{device}", {})
    phone.run(NOTE, make, "After removal")
    phone.until('state.net.value === "removed"', "word of it")
    kept = phone.run("return db.unaccepted()")
    assert [event["data"]["text"] for event in kept] == ["After removal"]
