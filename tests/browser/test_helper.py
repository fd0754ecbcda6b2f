"""A helper does the work of a step and cannot spoil the make or its recipe."""

import pytest

from tests.browser.test_screens import show


@pytest.fixture
def helper(new_phone):
    """A helper's phone that knows a maker's make; its id is beside it."""
    maker, phone = new_phone(), new_phone("Tove", "helper")
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


def test_a_helper_who_finds_the_address_cannot_skip_a_step_either(creamery, helper):
    show(helper, f"make/{helper.make}/skip/receive")
    helper.page.get_by_text("Not needed this time").tap()
    helper.page.get_by_role("button", name="Skip the step").tap()
    trouble = helper.page.locator(".bar-act")
    trouble.wait_for()
    assert "may not do that" in trouble.inner_text()
    assert "maker" in trouble.inner_text().lower()
    helper.sent()
    assert "step_skipped" not in [event["kind"] for event in creamery.events()]
    (first, *_) = creamery.ask("GET", f"/makes/{helper.make}/view")["steps"]
    assert first["status"] == "ready"


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
    recipe = helper.run("return state.recipes.value[0]")
    status, answer = posted(helper, "/recipes", recipe)
    assert status == 403
    assert set(answer) == {"error"}
    assert set(answer["error"]) == {"key", "text", "field", "limit"}
    assert (answer["error"]["key"], answer["error"]["limit"]) == (
        "role_too_low",
        "maker",
    )
    assert [row["version"] for row in creamery.ask("GET", "/recipes")] == [1]
