"""What is due across makes, what falls together, and who has which task."""

import re

import pytest

from tests.browser.conftest import until
from tests.browser.test_screens import (
    SIZES,
    TOO_WIDE,
    problems_of_layout,
    read_cautions,
    show,
)

# Two makes at their first pressing, begun so that both turns fall together; one
# that has just been opened. Minutes ago, by the phone's own clock.
PRESSING = """
  const recipe = state.recipes.value[0];
  const [make, startedMin] = args;
  const ago = (minutes) => nowMs() - minutes * 60000;
  const before = recipe.steps.findIndex((one) => one.key === "press_1");
  for (const [place, step] of recipe.steps.slice(0, before).entries()) {
    const atMs = ago(startedMin + 60 - place);
    await record("step_begun", {make, atMs, data: {step: step.key}});
    await record("step_ended", {make, atMs, data: {step: step.key, why: "x"}});
  }
  await record("step_begun", {make, atMs: ago(startedMin), data: {step: "press_1"}});
"""


@pytest.fixture
def maker(new_phone):
    """A maker's phone with three open makes at different stages."""
    phone = new_phone()
    phone.first = phone.open_make(name="North", vat="Long vat", batch="N1")
    phone.second = phone.open_make(name="South", vat="Round vat", batch="S1")
    phone.third = phone.open_make(name="East", batch="E1")
    phone.run(PRESSING, phone.first, 10)
    phone.run(PRESSING, phone.second, 8)
    show(phone, "now")
    phone.page.get_by_text("At the same time").wait_for()
    return phone


def words(phone, what="main"):
    return phone.page.locator(what).first.inner_text()


def test_all_that_the_core_says_is_due_stands_on_the_list(maker):
    maker.run(
        'await record("timer_started", {make: args[0],'
        ' data: {label: "Call the vet", lasts_s: 7200}})',
        maker.third,
    )
    maker.page.locator(".row-title", has_text="Call the vet").wait_for()
    due = maker.run("return state.board.value.due")
    # The press of each, its gauge, the milk of the third, and the timer.
    wanted = {
        ("North", "step_end"),
        ("South", "step_end"),
        ("North", "reading"),
        ("South", "reading"),
        ("East", "step_begin"),
        ("East", "timer"),
    }
    assert {(row["make_name"], row["what"]) for row in due} == wanted
    assert maker.page.locator(".due").count() == len(due)
    heads = maker.page.locator(".due-group h2").all_inner_texts()
    assert heads[:3] == ["Late", "Now", "Within the hour"]


def test_two_turns_at_once_are_told_once_with_what_may_wait(maker):
    # Two makes at the same stage meet again and again: only the next are told.
    all_told = maker.page.locator(".clash")
    until(lambda: all_told.count() == 3, "the clashes to be told")
    said = words(maker, ".clash")
    assert "2 things at about" in said
    assert said.count("Turn the wheels") == 3  # two acts, and the one that may wait
    assert "North" in said
    assert "South" in said
    # The recipe lets the press run for 45 minutes: the later one until 37 from now.
    assert "may wait until" in said
    # On the make itself it stands too, and not on one that it does not touch.
    show(maker, f"make/{maker.first}")
    maker.page.locator(".clash").first.wait_for()
    show(maker, f"make/{maker.third}")
    maker.page.locator(".primary").wait_for()
    read_cautions(maker)
    maker.page.locator(".step-title").wait_for()
    assert maker.page.locator(".clash").count() == 0


def test_a_clash_goes_when_one_of_the_two_is_done(maker):
    maker.page.locator(".clash", has_text="(1 of 3)").wait_for()
    done = {"step": "press_1", "why": "It has closed"}
    maker.record("step_ended", make=maker.second, data=done)
    maker.page.locator(".clash", has_text="(1 of 3)").wait_for(state="detached")


def both(new_phone, maker):
    """Return a helper's phone that knows what the maker's knows."""
    maker.sent()
    helper = new_phone("Tove", "helper")
    maker.run("return actions.readMe()")  # a second person now does the work
    helper.run('sync.kick("asked")')
    helper.until("state.board.value?.makes.length === 3", "the makes")
    return helper


def heard(phone):
    phone.run('sync.kick("asked")')


def test_a_task_is_taken_in_one_tap_and_taken_over_with_a_word(new_phone, maker):
    helper = both(new_phone, maker)
    show(helper, "now")
    row = helper.page.locator(".due", has_text="Begin: Receive the milk")
    row.get_by_role("button", name="I’ll do it").tap()
    row.get_by_text("You have it").wait_for()
    helper.sent()
    heard(maker)
    row = maker.page.locator(".due", has_text="Begin: Receive the milk")
    row.get_by_text("Tove has it").wait_for()
    row.get_by_role("button", name="Take over").tap()
    row.get_by_text("You have it").wait_for()
    maker.sent()
    heard(helper)
    # Whoever had it is told by whom and when.
    row = helper.page.locator(".due", has_text="Begin: Receive the milk")
    row.get_by_text("Mara took this over from you at").wait_for()
    # And far away it stands beside the step.
    show(helper, "live")
    card = helper.page.locator(".live-card", has_text="East")
    card.get_by_text("Mara took this over from you").wait_for()


def test_two_who_take_the_same_offline_are_both_shown(new_phone, maker):
    helper = both(new_phone, maker)
    for phone in (maker, helper):
        phone.context.set_offline(True)
        phone.record("task_taken", make=maker.third, data={"step": "receive"})
    for phone in (maker, helper):
        phone.context.set_offline(False)
        phone.sent()
    heard(maker)
    row = maker.page.locator(".due", has_text="Begin: Receive the milk")
    row.get_by_text("talk to each other").wait_for()
    said = row.inner_text()
    assert "You" in said
    assert "Tove" in said
    # One's own is left in one tap; the other's stays.
    row.get_by_role("button", name="Leave it").tap()
    row.get_by_text("Tove has it").wait_for()


def test_a_task_nobody_can_have_any_more_looks_old(maker):
    maker.run(
        'await record("task_taken", {make: args[0],'
        ' atMs: nowMs() - 61 * 60000, data: {step: "receive"}})',
        maker.third,
    )
    old = maker.page.locator(".task-words.is-old")
    old.wait_for()
    assert "Is that still so?" in old.inner_text()


def test_before_a_make_is_opened_its_clashes_are_told(maker):
    show(maker, "new")
    maker.page.locator(".choice").first.tap()
    for digit in "600":
        maker.page.locator(".keys .key").filter(has_text=digit).first.tap()
        maker.page.wait_for_timeout(120)
    maker.page.locator(".foot .primary, .key-save").last.tap()
    maker.page.locator(".choice", has_text="usual here").tap()
    told = maker.page.locator(".clashes-if")
    told.wait_for()
    assert "Begun at" in told.inner_text()
    before = told.locator("[role=status]").inner_text()
    told.get_by_role("button", name="1 hour later").tap()
    maker.page.wait_for_function(
        "(before) => document.querySelector('.clashes-if [role=status]')"
        ".innerText !== before",
        arg=before,
    )
    assert maker.page.get_by_role("button", name="15 min sooner").is_enabled()


def test_a_practice_make_says_so_on_every_screen(maker):
    make = maker.open_make(name="Practice: West", practice=True, batch="P1")
    show(maker, "now")
    card = maker.page.locator(".card", has_text="Practice: West")
    card.locator(".practice").wait_for()
    # Beside real makes it waits below, in one line.
    row = maker.page.locator(".due", has_text="Practice: West")
    assert row.count() == 0
    maker.page.get_by_role("button", name=re.compile("due for practice")).tap()
    row.first.wait_for()
    assert row.first.locator(".practice").inner_text() == "PRACTICE"
    # A real make has no such word.
    assert (
        maker.page.locator(".card", has_text="North").locator(".practice").count() == 0
    )
    for place in ("", "/record", "/steps", "/note", "/timer", "/curve"):
        show(maker, f"make/{make}{place}")
        maker.page.locator(".practice-bar").wait_for()
    show(maker, f"make/{make}/record")
    maker.page.get_by_text("No cheese was made").wait_for()
    show(maker, "live")
    live = maker.page.locator(".live-card", has_text="Practice: West")
    live.locator(".practice").wait_for()
    show(maker, f"make/{maker.first}")
    maker.page.locator(".practice-bar").wait_for(state="detached")


def test_two_people_three_makes_and_a_clash_fit_every_screen(new_phone, maker):
    both(new_phone, maker)
    maker.page.get_by_role("button", name="I’ll do it").first.wait_for()
    found = {}
    for text in ("", "250%"):
        maker.page.evaluate(
            "(text) => { document.documentElement.style.fontSize = text; }", text
        )
        for wide, high in SIZES:
            maker.page.set_viewport_size({"width": wide, "height": high})
            for place in ("now", "live", f"make/{maker.first}"):
                show(maker, place)
                problems = (
                    maker.page.evaluate(TOO_WIDE)
                    if text
                    else problems_of_layout(maker.page, wide, high)
                )
                if problems:
                    found[(text, wide, place[:4])] = problems
    assert found == {}
