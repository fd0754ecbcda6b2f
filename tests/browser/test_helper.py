"""A helper does the work of a step and cannot spoil the make or its recipe."""

import pytest

from tests.browser.conftest import until
from tests.browser.test_screens import show

SLOW_DOWN = 4
TO_THE_PRESS = """
  const test = { quantity: "drug_test", value: "negative" };
  await record("reading_taken", { make: args[0], data: test });
  // Everything before the press is over; what is over needs no detail here.
  const recipe = state.recipes.value[0];
  for (const step of recipe.steps) {
    if (step.key === "press_1") break;
    await record("step_begun", {make: args[0], data: {step: step.key}});
    await record("step_ended", {make: args[0], data: {step: step.key, why: "x"}});
  }
"""


@pytest.fixture
def helper(new_phone):
    """A helper's phone that knows a maker's make; its id is beside it."""
    maker, phone = new_phone(), new_phone("Tove", "helper")
    phone.maker = maker
    phone.make = maker.open_make()
    maker.sent()
    phone.run('sync.kick("asked")')
    phone.until("state.board.value?.makes.length === 1", "the make to arrive")
    show(phone, f"make/{phone.make}")
    phone.page.locator(".foot .primary").wait_for()
    phone.page.get_by_role("button", name="I have read this").tap()
    phone.page.get_by_role("button", name="Begin: Receive the milk").wait_for()
    return phone


def posted(phone, path, body):
    """Post as this phone does; return status and answer."""
    return phone.run(
        """
        const answer = await fetch("/api/v1" + args[0], {
          method: "POST", body: JSON.stringify(args[1]),
          headers: {"Content-Type": "application/json", "X-Vatside": "1"},
        });
        return [answer.status, await answer.json()];
        """,
        path,
        body,
    )


def test_a_helper_is_not_offered_to_skip_a_step(helper):
    words = helper.page.locator("main").inner_text()
    assert "Write a note" in words
    assert "Skip this step" not in words
    assert "The whole make" not in words


def test_a_helper_who_finds_the_address_is_told_who_may_skip(creamery, helper):
    show(helper, f"make/{helper.make}/skip/receive")
    helper.page.get_by_text("Only a maker may skip a step").wait_for()
    # Nothing to tap but the ways out: no reason, no button that would fail.
    assert helper.page.locator("main button").all_inner_texts() == ["‹ Back"]
    helper.page.get_by_role("button", name="Back").tap()
    helper.page.locator(".step-title").wait_for()
    assert "step_skipped" not in [event["kind"] for event in creamery.events()]


@pytest.mark.everyday
def test_the_server_puts_a_helper_s_skip_aside_with_the_reason(creamery, helper):
    taken = helper.record("step_begun", make=helper.make, data={"step": "receive"})
    helper.sent()
    event = {
        **taken,
        "id": taken["id"][:-4] + "0000",
        "seq": taken["seq"] + 1,
        "kind": "step_skipped",
        "data": {"step": "to_vat", "why": "I say so"},
    }
    body = {"api": 1, "app": "test", "epoch": creamery.epoch(), "t0": 0}
    status, answer = posted(helper, "/sync/push", {**body, "events": [event]})
    assert status == 200
    (result,) = answer["results"]
    assert result["st"] == "needs_look"
    assert [why["key"] for why in result["why"]] == ["not_allowed"]
    (item,) = creamery.ask("GET", "/needs-look")
    assert item["event"]["id"] == event["id"]


def test_a_helper_reads_a_recipe_and_finds_nothing_to_change(helper):
    show(helper, "recipes/washed-wheel")
    helper.page.get_by_text("Sources").first.wait_for()
    assert helper.page.locator(".row-still").count() > 20
    assert helper.page.locator("main button").all_inner_texts() == ["‹ Back"]


def test_the_server_refuses_a_helper_s_recipe_in_the_one_shape_of_error(
    creamery, helper
):
    before = creamery.ask("GET", "/recipes")
    recipe = helper.run("return state.recipes.value[0]")
    status, answer = posted(helper, "/recipes", recipe)
    assert status == 403
    assert set(answer) == {"error"}
    assert set(answer["error"]) == {"key", "text", "field", "limit"}
    assert (answer["error"]["key"], answer["error"]["limit"]) == (
        "role_too_low",
        "maker",
    )
    assert creamery.ask("GET", "/recipes") == before


def test_a_helper_s_correction_of_a_legal_reading_is_refused_in_words(creamery, helper):
    read = {"quantity": "milk_temp_c", "value": 4.2, "step": "receive"}
    helper.record("reading_taken", make=helper.make, data=read)
    helper.sent()
    (taken,) = [row for row in creamery.events() if row["kind"] == "reading_taken"]
    problems = helper.run(
        """
        const change = {set: {value: 4.0}, why: "Misread"};
        try {
          await record("entry_corrected", {make: args[0], ref: args[1], data: change});
        } catch (problem) { return problem.problems; }
        return null;
        """,
        helper.make,
        taken["id"],
    )
    assert [(row["key"], row["limit"]) for row in problems] == [
        ("not_allowed", "maker")
    ]
    # Nothing was lost: the value stands under "Needs a look", with the reason.
    show(helper, "look")
    assert "maker" in helper.page.locator("main").inner_text().lower()
    assert creamery.ask("GET", f"/makes/{helper.make}/record")[-1]["corrections"] == []


@pytest.mark.everyday
def test_from_a_cold_phone_the_press_runs_in_two_taps(creamery, helper):
    helper.maker.run(TO_THE_PRESS, helper.make)
    helper.maker.sent()
    helper.run('sync.kick("asked")')
    helper.until(
        "state.board.value?.due.some((one) => one.step === 'press_1')", "the press"
    )
    helper.kept_offline()
    helper.page.wait_for_timeout(1000)  # the last picture is on disk
    helper.page.close()
    page = helper.page = helper.context.new_page()
    helper.watch(page)
    session = helper.context.new_cdp_session(page)
    session.send("Emulation.setCPUThrottlingRate", {"rate": SLOW_DOWN})
    page.goto(helper.url)
    row = page.get_by_role("button", name="Begin: Press: first time")
    row.wait_for()
    # The row is among the first things in sight: no scrolling with wet hands.
    box = row.bounding_box()
    assert box["y"] + box["height"] <= page.viewport_size["height"]
    row.tap()
    # The step opens without waiting for its cautions; they are there soon enough, too.
    page.locator(".foot .primary", has_text="Read. Begin now").tap()
    page.locator(".countdown").first.wait_for()
    session.send("Emulation.setCPUThrottlingRate", {"rate": 1})

    def begun():
        return [
            row["person"]
            for row in creamery.events()
            if row["kind"] == "step_begun" and row["data"]["step"] == "press_1"
        ]

    until(begun, "the press to be known to the server")
    names = {one["id"]: one["name"] for one in creamery.ask("GET", "/people")}
    assert [names[person] for person in begun()] == ["Tove"]
