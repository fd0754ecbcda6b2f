"""What one phone can do with no network, a dead database or a dead core."""

import contextlib
import json

import pytest
from playwright.sync_api import Error

from tests.browser.conftest import until

NOTES = """
  const made = [];
  for (let n = 0; n < args[1]; n += 1) {
    const text = `Note ${args[2] + n}`;
    made.push((await record("note_added", {make: args[0], data: {text}})).id);
  }
  return made;
"""
# Makes the database's next transactions fail as a phone's browser does.
BROKEN = """
  globalThis.failures = 0;
  globalThis.failing = 0;
  const whole = IDBDatabase.prototype.transaction;
  IDBDatabase.prototype.transaction = function (stores, mode, options) {
    if (globalThis.failing > 0 && mode === "readwrite") {
      globalThis.failing -= 1;
      globalThis.failures += 1;
      throw new DOMException("planted", globalThis.failureName);
    }
    return whole.call(this, stores, mode, options);
  };
"""
SILENT_CORE = """
  globalThis.Worker = class {
    postMessage() {}
    terminate() {}
  };
"""
LOGGED = """
  const raw = await new Promise((resolve) => {
    const asked = indexedDB.open("vatside");
    asked.onsuccess = () => resolve(asked.result);
  });
  const rows = await new Promise((resolve) => {
    const asked = raw.transaction("log").objectStore("log").getAll();
    asked.onsuccess = () => resolve(asked.result);
  });
  raw.close();
  return rows.map((row) => row.make);
"""
VIEWED = "return ask.view({ make: args[0] })"
BREAK = "globalThis.failureName = args[0]; globalThis.failing = args[1];"
# A browser that lets the page's wish for the new version fall.
FORGETS = """
  const post = ServiceWorker.prototype.postMessage;
  ServiceWorker.prototype.postMessage = function (word, ...more) {
    if (word !== "activate") post.call(this, word, ...more);
  };
"""
IS_NEXT = "document.documentElement.dataset.next"


def note_ids(creamery):
    return [one["id"] for one in creamery.events() if one["kind"] == "note_added"]


@pytest.mark.everyday
def test_fifty_entries_made_without_a_network_reach_the_server_once(
    creamery, new_phone
):
    phone = new_phone()
    phone.kept_offline()
    make = phone.open_make()
    phone.sent()
    phone.context.set_offline(True)
    phone.reload()
    phone.until('state.core.value === "ready"', "the core, from what the phone keeps")
    made = phone.run(NOTES, make, 25, 0)
    assert phone.run("return state.unsent.value") == 25
    # An empty battery in the middle, and a start with no network at all.
    phone.kill()
    phone.open(offline=True)
    phone.until('state.core.value === "ready"', "the core after an empty battery")
    phone.until("state.unsent.value === 25", "what was recorded before")
    made += phone.run(NOTES, make, 25, 25)
    texts = phone.run("return state.view.value.log.map((line) => line.data.text)")
    assert texts[:3] == ["Note 49", "Note 48", "Note 47"]
    phone.context.set_offline(False)
    # Chromium writes cookies down every 30 s: the battery took the pairing along.
    phone.pair(creamery.invite("Mara", "maker"))
    phone.sent()
    assert note_ids(creamery) == made


@pytest.mark.everyday
def test_an_entry_is_on_disk_before_it_counts_as_recorded(new_phone):
    phone = new_phone()
    make = phone.open_make()
    phone.context.set_offline(True)
    made = phone.record("note_added", make=make, data={"text": "Rennet in"})
    phone.kill()
    phone.open(offline=False)
    kept = phone.run("return [...await db.unaccepted(), ...await db.everything()]")
    assert made["id"] in [event["id"] for event in kept]


@pytest.mark.everyday
def test_a_dead_database_handle_is_replaced_and_the_entry_written_once(
    creamery, new_phone
):
    phone = new_phone(scripts=[BROKEN])
    make = phone.open_make()
    phone.sent()
    for name in ("InvalidStateError", "UnknownError"):
        phone.run(BREAK, name, 2)
        made = phone.record("note_added", make=make, data={"text": name})
        assert phone.run("return globalThis.failures") >= 2
        assert made["seq"] > 1
    phone.sent()
    texts = [
        event["data"]["text"]
        for event in creamery.events()
        if event["kind"] == "note_added"
    ]
    assert texts == ["InvalidStateError", "UnknownError"]
    assert phone.run("return state.unsaved.value.length") == 0


def test_a_value_that_cannot_be_saved_stays_in_sight_until_it_is(creamery, new_phone):
    phone = new_phone(scripts=[BROKEN])
    make = phone.open_make()
    for name, key in (
        ("InvalidStateError", "storage_failed"),
        ("QuotaExceededError", "storage_full"),
    ):
        phone.run(BREAK, name, 1000)
        said = phone.run(
            """
            const data = {quantity: "curd_temp_c", value: 31.5, typed: "31,5"};
            try { await record("reading_taken", {make: args[0], data}); }
            catch (failure) { return failure.key; }
            """,
            make,
        )
        assert said == key
        (row,) = phone.run("return state.unsaved.value")
        assert (row["key"], row["data"]["typed"]) == (key, "31,5")
        assert phone.run("return state.storage.value.problem") == key
        phone.run(BREAK, name, 0)
        # A page that is closed in despair must not lose it either.
        phone.reload()
        assert phone.run("return state.unsaved.value.length") == 1
        phone.run("return actions.retryUnsaved(args[0])", row["id"])
        assert phone.run("return state.unsaved.value") == []
    phone.sent()
    values = [
        event["data"]["value"]
        for event in creamery.events()
        if event["kind"] == "reading_taken"
    ]
    assert values == [31.5, 31.5]


def test_a_full_phone_lets_go_of_finished_makes_and_of_nothing_unsent(new_phone):
    other = new_phone("Ivo")
    old = other.open_make(name="Finished")
    other.record("make_closed", make=old)
    other.sent()
    phone = new_phone(scripts=[BROKEN])
    make = phone.open_make(name="Running")
    phone.sent()
    phone.until(
        '(await db.getSaved(["board"]))[0]?.makes.length === 2'
        f' && (await db.getSaved(["board"]))[0].makes.find((one) => one.id === "{old}")'
        '.state === "closed"',
        "the board to be saved",
    )
    until(lambda: set(phone.run(LOGGED)) == {old, make}, "both makes to be pulled")
    phone.context.set_offline(True)
    made = phone.run(NOTES, make, 1, 0)
    phone.run(BREAK, "QuotaExceededError", 1)
    made += phone.run(NOTES, make, 1, 1)
    assert [event["id"] for event in phone.run("return db.unaccepted()")] == made
    assert set(phone.run(LOGGED)) == {make}
    assert phone.run("return state.storage.value.problem") is None
    # The finished make is still there to read, from the server.
    phone.context.set_offline(False)
    phone.sent()
    phone.run("await desk.rebuild(); await actions.openMake(args[0]);", old)
    assert phone.run(VIEWED, old) is None
    assert phone.run("return state.view.value.make.name") == "Finished"


@pytest.mark.everyday
def test_an_impossible_value_is_refused_with_field_and_limit_and_kept(new_phone):
    phone = new_phone()
    make = phone.open_make()
    said = phone.run(
        """
        try {
          const data = {quantity: "ph", value: 65};
          await record("reading_taken", {make: args[0], data});
        } catch (failure) { return [failure.key, failure.problems]; }
        """,
        make,
    )
    # The pH scale of the table of quantities ends at 14.
    assert said == ["refused", [{"field": "value", "key": "above", "limit": 14}]]
    (row,) = phone.run("return state.unsaved.value")
    assert row["data"] == {"quantity": "ph", "value": 65}
    assert phone.run("return (await db.everything()).length") == 1  # the opening


@pytest.mark.everyday
def test_the_last_view_is_painted_and_a_tap_is_kept_though_the_core_is_dead(
    creamery, new_phone
):
    phone = new_phone()
    make = phone.open_make()
    phone.sent()
    phone.until(
        f'(await db.getSaved(["view:{make}"]))[0] !== undefined', "the view to be saved"
    )
    phone.close()
    phone.scripts = [SILENT_CORE]
    phone.open()
    assert phone.run("return state.view.value.make.id") == make
    assert phone.run("return state.core.value") == "starting"
    made = phone.record("note_added", make=make, data={"text": "Still here"})
    phone.sent()
    assert made["id"] in note_ids(creamery)


def test_what_is_unsent_can_be_taken_out_as_a_file(new_phone):
    phone = new_phone()
    make = phone.open_make()
    phone.sent()
    phone.context.set_offline(True)
    made = phone.run(NOTES, make, 3, 0)
    with phone.page.expect_download() as waiting:
        file = phone.run("return actions.exportQueue()")
    assert waiting.value.suggested_filename == file["name"]
    assert [one["id"] for one in json.loads(file["text"])["events"]] == made


@pytest.fixture
def vat_test(monkeypatch):
    """Let servers that start now answer to one more name."""
    monkeypatch.setenv("VATSIDE_HOSTS", "vat.test")


def test_plain_http_on_a_network_works_online_and_says_that_offline_does_not(
    vat_test, creamery, new_phone
):
    # Chromium takes 127.0.0.1 for secure, so the box gets a name of its own.
    phone = new_phone(
        paired=True,
        flags=["--host-resolver-rules=MAP vat.test 127.0.0.1"],
        url=f"http://vat.test:{creamery.port}",
    )
    assert phone.page.evaluate("isSecureContext") is False
    phone.until('state.offlineReady.value === "unavailable"', "a clear word")
    make = phone.open_make()
    made = phone.record("note_added", make=make, data={"text": "Over plain http"})
    phone.sent()
    assert note_ids(creamery) == [made["id"]]


@pytest.mark.parametrize(
    "scripts",
    [
        pytest.param([], id="heard"),
        pytest.param([FORGETS], id="forgotten"),
    ],
)
def test_a_new_version_waits_until_a_person_lets_it_in(creamery, new_phone, scripts):
    phone = new_phone(scripts=scripts)
    phone.kept_offline()
    first = phone.page.evaluate("caches.keys()")
    assert len(first) == 1
    changed = creamery.program / "static" / "js" / "app.js"
    before = changed.read_text()
    changed.write_text(before + "document.documentElement.dataset.next = 1;\n")
    try:
        let_in(phone, first)
    finally:
        changed.write_text(before)


def let_in(phone, first):
    phone.page.evaluate("navigator.serviceWorker.ready.then((one) => one.update())")
    phone.until("state.updateReady.value", "word of the new version")
    assert kept(phone) != first
    assert first[0] in kept(phone)
    phone.reload()
    assert not runs_next(phone)
    # Refused while something is being sent, so a tap may have to be repeated.
    until(lambda: is_heard(phone), "the tap to be heard")
    until(lambda: runs_next(phone), "the new version to run")
    # Where the browser forgot the wish, the page let its worker go and has to keep
    # the app anew, which phones of tests do when they are told to.
    phone.keep()
    until(lambda: first[0] not in (kept(phone) or first), "the old one to be gone")


def is_heard(phone):
    try:
        return phone.run("return actions.applyUpdate()")
    except Error:
        return True  # the reload was quicker than the answer


def kept(phone):
    with contextlib.suppress(Error):  # asked in the middle of a reload
        return phone.page.evaluate("caches.keys()")


def runs_next(phone):
    with contextlib.suppress(Error):  # asked in the middle of the reload
        return phone.page.evaluate(IS_NEXT) == "1"
