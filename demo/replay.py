"""Serve a make of the twin on a fast clock, so that the live view moves.

The crew's phones send each entry when it falls due by the server's clock, through
the same door as any phone. The folder is filled first when it is empty. The make
begins with the milk in the vat, about to be heated.

Use: python demo/replay.py --data DIR --replay 60
"""

import argparse
import contextlib
import os
import random
import sys
import time
from dataclasses import replace
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
sys.path.insert(0, str(ROOT))

from demo import twin_day  # noqa: E402
from demo.seed import EQUIPMENT, Plan, pair, phones, seed, send  # noqa: E402
from server import store  # noqa: E402
from server.app import create_app  # noqa: E402
from server.cli.serve import with_clock  # noqa: E402
from server.cli.start import start  # noqa: E402
from server.config import (  # noqa: E402
    DEFAULT_HTTPS_PORT,
    DEFAULT_PORT,
    Clock,
    from_environment,
)

PLAN = Plan("Replayed make", "QB-262", 1150.0, "Round vat", "heat", 0)
LOOK_S = 0.5


def corrected_ms(event):
    """Return an event's instant by the server's clock [ms].

    Args:
        event: the event.
    """
    return event["at_ms"] + event["off_ms"]


def due(events, now_ms):
    """Split events into those that have happened and those still to come.

    Args:
        events: list of events, oldest first.
        now_ms: now, by the server's clock [ms].

    Returns:
        (list of those until now, list of the others).
    """
    count = sum(1 for event in events if corrected_ms(event) <= now_ms)
    return events[:count], events[count:]


def play(settings, parent):
    """Send the make's entries as they fall due, while a parent lives.

    Args:
        settings: settings of the server, its fast clock included.
        parent: id of the serving process.
    """
    clock = settings.clock
    with create_app(settings).app_context():
        now_ms = clock.now_ms()
        by_person = phones(random.Random())
        waiting = twin_day.entries(PLAN, by_person, EQUIPMENT, now_ms)
        pair(by_person, now_ms, "Recorded phone of")
        while waiting and os.getppid() == parent:
            ready, waiting = due(waiting, clock.now_ms())
            send(ready, by_person)
            store.db.session.remove()
            time.sleep(LOOK_S)


def arguments():
    """Return what the command line says."""
    parser = argparse.ArgumentParser(description=__doc__.split("\n\n")[0])
    parser.add_argument("--data", type=Path, required=True, metavar="DIR")
    parser.add_argument("--host", default="0.0.0.0")
    parser.add_argument("--port", type=int, default=DEFAULT_PORT)
    parser.add_argument("--https-port", type=int, default=DEFAULT_HTTPS_PORT)
    parser.add_argument("--no-tls", action="store_true")
    parser.add_argument("--replay", type=float, default=60.0, metavar="RATE")
    parser.add_argument("--play", nargs=2, type=int, help=argparse.SUPPRESS)
    return parser.parse_args()


def main():
    """Start the server and, beside it, the phones of the crew."""
    args = arguments()
    settings = replace(from_environment(), data_dir=args.data, https=not args.no_tls)
    if args.play:
        clock = Clock(args.replay, *args.play)
        # Ctrl+C reaches this process too; the server says what there is to say.
        with contextlib.suppress(KeyboardInterrupt):
            play(replace(settings, clock=clock), os.getppid())
        return
    with create_app(settings).app_context():
        is_empty = store.count_events() == 0
        store.db.engine.dispose()
    if is_empty:
        seed(args.data)
    settings = with_clock(settings, args.replay)
    clock = settings.clock
    command = [sys.executable, __file__, "--data", str(args.data)]
    command += ["--replay", str(clock.rate), "--play"]
    command += [str(clock.real_ms), str(clock.shown_ms)]
    # Nobody waits for it: it ends by itself once this process is gone.
    os.spawnv(os.P_NOWAIT, sys.executable, command)
    try:
        start(settings, args.host, args.port, https_port=args.https_port)
    except ValueError as problem:
        sys.exit(str(problem))


if __name__ == "__main__":
    main()
