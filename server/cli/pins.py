"""The command `vatside reset-pin`: for an owner who forgot the PIN."""

import argparse
from collections.abc import Callable
from datetime import datetime
from typing import Any

from server.app import create_app
from server.auth import RefusedError, people, pins
from server.config import Settings
from server.store import hold
from server.store.security_log import SecurityLog


class PinError(Exception):
    """Say why no PIN was reset."""


def add_command(
    commands: Any,
    data: argparse.ArgumentParser,
    settings_of: Callable[[argparse.Namespace], Settings],
) -> None:
    """Add the command to the command line.

    Args:
        commands: the parsers of all commands.
        data: the options that every command has.
        settings_of: function from what was typed to the settings.
    """

    def run(args: argparse.Namespace) -> int:
        """End a person's PIN; for half an hour they may set one on any phone."""
        settings = settings_of(args)
        hold.require_no_restore(settings.database_file)
        with create_app(settings).app_context():
            person = _named(args.name)
            try:
                until_ms = pins.reset_pin(
                    person, settings.clock.now_ms(), settings.clock.rate
                )
            except RefusedError as refused:
                raise PinError(f"{args.name} has no PIN: {refused.key}.") from refused
        SecurityLog(settings.data_dir).note("pin_reset", about=person)
        until = datetime.fromtimestamp(until_ms / 1000).astimezone()
        print(f"{args.name} may set a PIN on any phone until {until:%H:%M}.")
        return 0

    resetting = commands.add_parser("reset-pin", parents=[data], help=run.__doc__)
    resetting.add_argument("name", help="whose, as the list of people says")
    resetting.set_defaults(run=run)


def _named(name: str) -> str:
    found = [one.id for one in people() if one.active and name in (one.name, one.id)]
    if len(found) != 1:
        names = ", ".join(one.name for one in people() if one.active)
        raise PinError(f"{len(found)} people are called {name}. People here: {names}.")
    return found[0]
