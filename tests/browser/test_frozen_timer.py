"""Time on a phone that is frozen, moved or wrong."""

import time

# The two clocks that a page can read, moved by hand.
CLOCKS = """
  globalThis.moved = { wall: 0, mono: 0 };
  const wall = Date.now;
  const mono = performance.now.bind(performance);
  Date.now = () => wall() + globalThis.moved.wall;
  performance.now = () => mono() + globalThis.moved.mono;
"""
HOUR_MS = 3_600_000
NEAR_MS = 3000  # requests on a busy test machine


def now_ms():
    return time.time_ns() // 1_000_000


def corrected_ms(event):
    return event["at_ms"] + event["off_ms"]


def noted(phone, make, text):
    """Record a note; return it, and when it was made by this machine's clock."""
    before_ms = now_ms()
    made = phone.record("note_added", make=make, data={"text": text})
    return made, (before_ms + now_ms()) // 2


def start_timer(phone, make, lasts_s):
    data = {"label": "Press", "lasts_s": lasts_s}
    return phone.record("timer_started", make=make, data=data)


def test_a_timer_of_a_frozen_page_has_lost_no_time(new_phone):
    phone = new_phone()
    make = phone.open_make()
    made = start_timer(phone, make, 4)
    page = phone.context.new_cdp_session(phone.page)
    page.send("Page.setWebLifecycleState", {"state": "frozen"})
    time.sleep(6)
    page.send("Page.setWebLifecycleState", {"state": "active"})
    timer = phone.run("await desk.refresh(); return state.view.value.timers[0]")
    assert timer["due_ms"] == corrected_ms(made) + 4000
    assert phone.run("return nowMs()") - timer["due_ms"] > 1900
    alerts = phone.run("return state.view.value.alerts.map((alert) => alert.form)")
    assert "time" in alerts


def test_a_wall_clock_moved_in_sight_moves_no_entry(creamery, new_phone):
    phone = new_phone(scripts=[CLOCKS])
    make = phone.open_make()
    phone.sent()
    phone.run(f"globalThis.moved.wall = {-3 * HOUR_MS}")
    made, true_ms = noted(phone, make, "Three hours back")
    assert made["at_ms"] < true_ms - 2 * HOUR_MS
    assert abs(corrected_ms(made) - true_ms) < NEAR_MS
    phone.until("state.clockWarning.value !== null", "a warning")
    phone.sent()
    (note,) = [one for one in creamery.events() if one["kind"] == "note_added"]
    assert note == made


def test_a_phone_seven_minutes_slow_records_the_right_time_and_is_told(new_phone):
    slow = CLOCKS + f"globalThis.moved.wall = {-420_000};"
    phone = new_phone(scripts=[slow])
    make = phone.open_make()
    phone.sent()
    made, true_ms = noted(phone, make, "Slow phone")
    assert abs(made["off_ms"] - 420_000) < NEAR_MS
    assert abs(corrected_ms(made) - true_ms) < NEAR_MS
    warning = phone.run("return state.clockWarning.value")
    assert abs(warning["off_ms"] - 420_000) < NEAR_MS
    # What was learned holds for the next start without a network.
    phone.kept_offline()
    phone.context.set_offline(True)
    phone.reload()
    later, true_ms = noted(phone, make, "Offline, still slow")
    assert abs(corrected_ms(later) - true_ms) < NEAR_MS


def test_a_phone_asleep_with_its_page_clock_stopped_tells_the_right_time(new_phone):
    phone = new_phone(scripts=[CLOCKS])
    make = phone.open_make()
    phone.sent()
    # Out of sight; half an hour passes that only the wall clock saw.
    phone.run("clock.observe(true); globalThis.moved.wall = 1800000;")
    made = phone.run(
        "clock.observe(false); return record('note_added', {make: args[0], "
        "data: {text: 'Awake again'}})",
        make,
    )
    assert abs(corrected_ms(made) - (now_ms() + 1_800_000)) < NEAR_MS
