"""Several phones and several tabs on one make."""

import pytest

RECORD = "return ask.record({ make: args[0] })"


def pulled(phone, event_id):
    phone.run('sync.kick("asked")')
    phone.until(
        f'(await db.everything()).some((one) => one.id === "{event_id}")',
        "the other phone's entry",
    )


@pytest.mark.everyday
def test_two_phones_that_began_a_step_offline_both_keep_it_and_agree(
    creamery, new_phone
):
    one, two = new_phone("Mara"), new_phone("Ivo", role="helper")
    make = one.open_make()
    one.sent()
    two.run('sync.kick("asked")')
    two.until(f'state.board.value?.makes[0]?.id === "{make}"', "the make to arrive")
    step = one.run("return state.view.value.steps[0].key")
    for phone in (one, two):
        phone.context.set_offline(True)
    begun = [
        phone.record("step_begun", make=make, data={"step": step})
        for phone in (one, two)
    ]
    for phone in (two, one):
        phone.context.set_offline(False)
        phone.sent()
    for phone, other in ((one, begun[1]), (two, begun[0])):
        pulled(phone, other["id"])
        phone.run("return actions.openMake(args[0])", make)
        (pair,) = phone.run("return state.view.value.to_judge")
        assert pair["first"]["id"] == begun[0]["id"]
        assert pair["later"]["id"] == begun[1]["id"]
    record = creamery.ask("GET", f"/makes/{make}/record")
    assert one.run(RECORD, make) == record
    assert two.run(RECORD, make) == record


@pytest.mark.everyday
def test_a_helper_cannot_record_what_only_a_maker_may(new_phone):
    one, two = new_phone("Mara"), new_phone("Ivo", role="helper")
    make = one.open_make()
    one.sent()
    two.run('sync.kick("asked")')
    two.until("state.board.value?.makes.length === 1", "the make to arrive")
    problems = two.run(
        """
        try { await record("make_closed", {make: args[0]}); }
        catch (failure) { return failure.problems; }
        """,
        make,
    )
    assert [problem["key"] for problem in problems] == ["not_allowed"]
    assert two.run("return state.unsent.value") == 0


def test_the_owner_sees_live_what_happens_in_the_room(creamery, new_phone):
    floor, office = new_phone("Mara"), new_phone("Nel", role="viewer")
    make = floor.open_make()
    floor.sent()
    office.run("globalThis.ending = actions.watch()")
    office.until('state.live.value === "live"', "the live line")
    made = floor.record("note_added", make=make, data={"text": "Curd is firm"})
    # The office's own asking comes every 15 s, so this came over the line.
    office.until(
        f'(await db.everything()).some((one) => one.id === "{made["id"]}")',
        "the entry, live",
        wait_s=5,
    )
    office.until(f'state.board.value.makes[0].id === "{make}"', "the board")
    office.run("globalThis.ending()")
    assert office.run("return state.live.value") == "off"


def test_the_live_view_goes_on_when_the_server_comes_back(creamery, new_phone):
    office = new_phone("Nel", role="viewer")
    floor = new_phone("Mara")
    office.run("globalThis.ending = actions.watch()")
    office.until('state.live.value === "live"', "the live line")
    creamery.kill()
    office.until('state.live.value === "polling"', "word that the line is gone")
    creamery.start()
    make = floor.open_make()
    floor.sent()
    office.until(f'state.board.value?.makes[0]?.id === "{make}"', "the new make")
    office.until('state.live.value === "live"', "the line to be back", wait_s=60)


def test_two_tabs_of_one_phone_count_together_and_show_the_same(creamery, new_phone):
    phone = new_phone()
    make = phone.open_make()
    tab = phone.context.new_page()
    phone.watch(tab)
    tab.goto(phone.url)
    phone.run("return actions.openMake(args[0])", make, page=tab)
    phone.context.set_offline(True)
    body = """
      return Promise.all([0, 1, 2, 3, 4].map((n) => record("note_added", {
        make: args[0], data: {text: `${args[1]} ${n}`},
      })));
    """
    made = phone.run(body, make, "first") + phone.run(body, make, "second", page=tab)
    seqs = sorted(event["seq"] for event in made)
    assert seqs == list(range(seqs[0], seqs[0] + 10))
    phone.until(
        "state.view.value.log"
        '.filter((line) => line.kind === "note_added").length === 10',
        "the first tab to show the second's entries",
    )
    phone.context.set_offline(False)
    phone.sent()
    sent = [event for event in creamery.events() if event["kind"] == "note_added"]
    assert sorted(event["id"] for event in sent) == sorted(
        event["id"] for event in made
    )
