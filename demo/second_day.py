"""Fill a folder with another day of the invented creamery, for its pictures.

The first day (`seed.py`) stands at a wash. On this one a hold runs in one vat,
milk sets in another, and a third make is pressed; there are some older makes
to draw charts of, and an entry from a phone that was taken off.

Use: python demo/second_day.py --data DIR
"""

import argparse
import json
import sys
from dataclasses import replace
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
sys.path.insert(0, str(ROOT))

from demo.recorded import MIN_MS  # noqa: E402
from demo.seed import (  # noqa: E402
    BY_RULE,
    DAY_MS,
    HELPER,
    RECIPE,
    Plan,
    begin,
    close,
    phones,
    reached,
    run,
    write,
)
from server import sync  # noqa: E402
from server.app import create_app  # noqa: E402
from server.config import from_environment, real_now_ms  # noqa: E402

OLDER = 11  # control limits are drawn from ten makes on
PLANS = (
    Plan("Night make", "QB-273", 1150.0, "Long vat", "press_2", 30 * MIN_MS),
    Plan("Dawn make", "QB-274", 860.0, "Round vat", "set", 20 * MIN_MS),
    Plan("Morning make", "QB-275", 1150.0, "Long vat", "hold", 16 * MIN_MS, BY_RULE),
)


def older(recipe, by_person, now_ms):
    """Return makes of the weeks before, closed, for the charts.

    Args:
        recipe: the recipe that they follow.
        by_person: answer of `phones`.
        now_ms: now [ms].
    """
    found = []
    for back in range(OLDER, 0, -1):
        start_ms = now_ms - (3 * back + 1) * DAY_MS
        batch = f"QB-{272 - back}"
        plan = Plan("Earlier make", batch, 1150.0, "Long vat", "", 0, BY_RULE)
        make = begin(recipe, plan, by_person, start_ms)
        run(make, start_ms + 2 * DAY_MS, "brine_small")
        close(make)
        found.append(make)
    return found


def leave_aside(make, by_person, now_ms):
    """Let a phone that was taken off send an entry, which a person must judge.

    Args:
        make: the make that it is about.
        by_person: answer of `phones`.
        now_ms: now [ms].
    """
    data = {"text": "The lid of the vat was open when I came.", "step": "set"}
    event = by_person[HELPER.id].record(
        make.make, "note_added", now_ms - 9 * MIN_MS, data
    )
    sender = sync.Sender(by_person[HELPER.id].device, HELPER.id, True)
    sync.push([event], None, sender, now_ms)


def seed(data_dir, now_ms=None):
    """Fill a folder with the day.

    Args:
        data_dir: the folder; it must be empty.
        now_ms: the instant that its day has come to [ms]; None for now.
    """
    app = create_app(replace(from_environment(), data_dir=data_dir))
    with app.app_context():
        now_ms = real_now_ms() if now_ms is None else now_ms
        recipe = json.loads(RECIPE.read_text("utf-8"))
        by_person = phones()
        makes = older(recipe, by_person, now_ms)
        of_day = [reached(recipe, plan, by_person, now_ms) for plan in PLANS]
        makes += of_day
        events = [event for make in makes for event in make.events]
        write(events, by_person, now_ms)
        leave_aside(of_day[1], by_person, now_ms)


def main():
    """Read the command line and fill the folder."""
    parser = argparse.ArgumentParser(description=__doc__.split("\n\n")[0])
    parser.add_argument("--data", type=Path, required=True, metavar="DIR")
    seed(parser.parse_args().data)


if __name__ == "__main__":
    main()
