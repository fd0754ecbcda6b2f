"""The command `vatside`: serve, check, certificates, back up, restore."""

import argparse
import json
import sys
from collections.abc import Sequence
from contextlib import nullcontext
from dataclasses import replace
from pathlib import Path

from server.app import create_app
from server.cli import checks, owner, pins, tls
from server.cli.serve import with_clock
from server.cli.start import start
from server.config import DATABASE_NAME, DEFAULT_PORT, Clock, Settings, from_environment
from server.core.desk.recipes import check_recipe
from server.store import copies, hold, security_log
from server.store.move import move
from server.store.restore import put_back
from server.store.security_log import SecurityLog

WORKERS = 2


def _settings(args: argparse.Namespace) -> Settings:
    settings = from_environment()
    if args.data is not None:
        settings = replace(settings, data_dir=Path(args.data))
    for name in ("tls_cert", "tls_key"):
        if getattr(args, name, None) is not None:
            settings = replace(settings, **{name: getattr(args, name)})
    return replace(settings, https=not getattr(args, "no_tls", False))


def _database(args: argparse.Namespace) -> Path:
    file = _settings(args).database_file
    if file is None:
        raise copies.BackupError(
            "This copies SQLite only; use pg_dump and pg_restore for PostgreSQL."
        )
    return file


def run_serve(args: argparse.Namespace) -> int:
    """Serve until the process is told to stop."""
    settings = _settings(args)
    settings = with_clock(settings, args.replay)
    start(settings, args.host, args.port, args.workers, args.https_port)
    return 0


def run_check(args: argparse.Namespace) -> int:
    """Tell whether all is well with the data, the recipes and the page."""
    problems = checks.problems(_settings(args), args.port, args.https_port)
    for problem in problems:
        print(problem, file=sys.stderr)
    if not problems:
        print("All is well.")
    return 1 if problems else 0


def run_tls(args: argparse.Namespace) -> int:
    """Make, renew and show the certificates of this room, and serve over https."""
    settings = _settings(args)
    code = tls.run_tls(settings, args)
    if args.only or args.take_root_key is not None:
        return code
    try:
        with hold.hold(settings.database_file, hold.SERVER) or nullcontext():
            pass
    except hold.InUseError as running:
        print(f"{running}\nIf it is the server, it takes the certificate up by itself.")
        return code
    print()
    start(settings, args.host, args.port, args.workers, args.https_port)
    return 0


def run_owner_code(args: argparse.Namespace) -> int:
    """Print a new one-time code for the owner, also when one is paired already."""
    settings = _settings(args)
    hold.require_no_restore(settings.database_file)
    with create_app(settings).app_context():
        print(owner.new_code())
    print(f"It works once, until {owner.until()}.")
    SecurityLog(settings.data_dir).note("owner_code_made")
    return 0


def run_backup(args: argparse.Namespace) -> int:
    """Copy the database into a file while the server runs."""
    copies.back_up(_database(args), args.file)
    SecurityLog(_settings(args).data_dir).note("backed_up")
    print(f"Copied to {args.file}.")
    return 0


def run_security_log(args: argparse.Namespace) -> int:
    """Print who was let in, sent away and changed: times in UTC, ids, no names."""
    found = list(security_log.lines(_settings(args).data_dir))
    for line in found[-args.last :]:
        rest = {name: line[name] for name in line if name not in ("at", "what")}
        told = " ".join(f"{name}={value}" for name, value in rest.items())
        print(f"{line['at']} {line['what']} {told}".rstrip())
    return 0


def run_restore(args: argparse.Namespace) -> int:
    """Put a copy back, and let the phones offer again what they still hold."""
    done = put_back(args.file, _database(args))
    SecurityLog(_settings(args).data_dir).note("restored")
    if done.kept is not None:
        print(f"The database as it was is kept as {done.kept}.")
    print(f"Put back {args.file}, with {done.events} events.")
    print("Phones will offer again what they still hold.")
    return 0


def run_move(args: argparse.Namespace) -> int:
    """Copy the data folder's SQLite into the empty database of DATABASE_URL."""
    settings = _settings(args)
    if settings.database_file is not None:
        raise copies.BackupError("Set DATABASE_URL to the new database first.")
    file = settings.data_dir / DATABASE_NAME
    count = move(file, settings.sqlalchemy_url)
    print(f"Copied {count} events. Start the server with the same DATABASE_URL.")
    print(f"{file} is left as it was.")
    return 0


def run_recipe_check(args: argparse.Namespace) -> int:
    """Tell what is wrong with a recipe in a file."""
    try:
        recipe = json.loads(args.file.read_text("utf-8"))
    except (OSError, ValueError) as failure:
        print(f"{args.file} cannot be read: {failure}", file=sys.stderr)
        return 1
    problems = check_recipe(recipe)
    for problem in problems:
        print(checks.in_words(problem), file=sys.stderr)
    if not problems:
        print(f"{args.file} is a sound recipe.")
    return 1 if problems else 0


def _rate(text: str) -> float:
    rate = float(text)
    Clock(rate)
    return rate


def _count(text: str) -> int:
    count = int(text)
    if count < 1:
        raise ValueError(text)
    return count


def parser() -> argparse.ArgumentParser:
    """Return what the command line may hold."""
    top = argparse.ArgumentParser(prog="vatside", description=__doc__)
    commands = top.add_subparsers(required=True, metavar="COMMAND")
    data = argparse.ArgumentParser(add_help=False)
    data.add_argument("--data", metavar="DIR", help="folder of the data")

    where = argparse.ArgumentParser(add_help=False)
    where.add_argument("--host", default="0.0.0.0")
    where.add_argument("--port", type=tls.port, default=DEFAULT_PORT)
    where.add_argument("--workers", type=int, default=WORKERS)

    serving = commands.add_parser(
        "serve", parents=[data, where], help=run_serve.__doc__
    )
    serving.add_argument(
        "--replay",
        type=_rate,
        default=1.0,
        metavar="RATE",
        help="let the clock run RATE times as fast (1 to 3600), for practice",
    )
    tls.add_options(serving)
    serving.set_defaults(run=run_serve)

    check = commands.add_parser("check", parents=[data], help=run_check.__doc__)
    check.add_argument("--port", type=tls.port, help="also start there, ask, and stop")
    tls.add_options(check)
    check.set_defaults(run=run_check)

    making = commands.add_parser("tls", parents=[data, where], help=run_tls.__doc__)
    tls.add_arguments(making)
    making.set_defaults(run=run_tls)

    code = commands.add_parser(
        "owner-code", parents=[data], help=run_owner_code.__doc__
    )
    code.set_defaults(run=run_owner_code)

    pins.add_command(commands, data, _settings)

    for name, run in (("backup", run_backup), ("restore", run_restore)):
        copying = commands.add_parser(name, parents=[data], help=run.__doc__)
        copying.add_argument("file", type=Path)
        copying.set_defaults(run=run)

    moving = commands.add_parser("move", parents=[data], help=run_move.__doc__)
    moving.set_defaults(run=run_move)

    security = commands.add_parser(
        "security-log", parents=[data], help=run_security_log.__doc__
    )
    security.add_argument("--last", type=_count, default=200, metavar="N")
    security.set_defaults(run=run_security_log)

    recipes = commands.add_parser("recipes", help="look at recipes")
    about = recipes.add_subparsers(required=True, metavar="COMMAND")
    checking = about.add_parser("check", help=run_recipe_check.__doc__)
    checking.add_argument("file", type=Path)
    checking.set_defaults(run=run_recipe_check)
    return top


def main(arguments: Sequence[str] | None = None) -> int:
    """Run one command.

    Args:
        arguments: the command line; None for the process's own.

    Returns:
        0 when all went well, 1 when not, 2 when the command was not understood.
    """
    args = parser().parse_args(arguments)
    try:
        return int(args.run(args))
    except (copies.BackupError, pins.PinError, ValueError) as problem:
        print(problem, file=sys.stderr)
        return 1
