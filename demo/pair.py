"""Print one-time codes that let a maker's and a helper's phone in.

The owner of a real creamery makes these on the People screen. They work for
ten minutes.

Use: python demo/pair.py --data DIR --url http://ADDRESS:PORT
"""

import argparse
import sys
from dataclasses import replace
from pathlib import Path

import segno

ROOT = Path(__file__).resolve().parent.parent
sys.path.insert(0, str(ROOT))

from demo.seed import HELPER, MAKER, OWNER  # noqa: E402
from server import auth  # noqa: E402
from server.app import create_app  # noqa: E402
from server.config import from_environment, real_now_ms  # noqa: E402


def main():
    """Read the command line and print the codes."""
    parser = argparse.ArgumentParser(description=__doc__.split("\n\n")[0])
    parser.add_argument("--data", type=Path, required=True, metavar="DIR")
    parser.add_argument("--url", required=True, help="where the phones find the server")
    args = parser.parse_args()
    app = create_app(replace(from_environment(), data_dir=args.data))
    with app.app_context():
        for person in (MAKER, HELPER):
            try:
                made = auth.start_pairing(person.id, OWNER.id, real_now_ms(), 1)
            except auth.RefusedError:
                sys.exit(f"{args.data} has no such people; run demo/seed.py first.")
            link = f"{args.url.rstrip('/')}/#/pair/{made.long}"
            print(f"{person.name}, {person.role}: type {made.short} or open\n  {link}")
            segno.make(link, error="m").terminal(compact=True)


if __name__ == "__main__":
    main()
