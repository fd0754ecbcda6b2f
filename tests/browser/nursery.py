"""Servers born ready: forked from one process that has loaded the program already.

A server of its own for each test spends four seconds of work before its first answer,
nearly all of it on what is the same each time: Python's imports, and the page and the
core made ready to send. Here that is done once, and each server is a fork of it; from
there on it runs as the command line runs it, in a group of its own, and is killed so.

Run in a program's folder, this file is that process: each line that it reads, a JSON
list of the environment, the file for the server's words and its arguments, is answered
by the number of the process.
"""

import contextlib
import functools
import gc
import json
import os
import select
import signal
import subprocess
import sys
from pathlib import Path


class Nursery:
    """The process that servers of one program are forked from.

    Args:
        program: folder of the program.
    """

    def __init__(self, program):
        self.process = subprocess.Popen(
            [sys.executable, __file__],
            cwd=program,
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            text=True,
        )

    def serve(self, words, *arguments):
        """Start a server; return its process.

        Args:
            words: path of the file for what it says.
            arguments: its command line, after the command.
        """
        Path(words).touch()  # the server may be asked for them before it speaks
        asked = [dict(os.environ), str(words), *arguments]
        self.process.stdin.write(json.dumps(asked) + "\n")
        self.process.stdin.flush()
        return Forked(int(self.process.stdout.readline()))

    def close(self):
        self.process.stdin.close()
        self.process.wait()
        self.process.stdout.close()


class Forked:
    """A process that is another's child, asked as one of `subprocess` is."""

    def __init__(self, pid):
        self.pid = pid
        try:
            self.handle = os.pidfd_open(pid)
        except ProcessLookupError:  # it has ended already
            self.handle = None

    def poll(self):
        """Return None while it runs."""
        return None if self._is_running(0) else "ended"

    def wait(self, timeout):
        """Return when it has ended; after `timeout` seconds, raise."""
        if self._is_running(timeout):
            raise subprocess.TimeoutExpired(f"process {self.pid}", timeout)

    def _is_running(self, wait_s):
        if self.handle is None:
            return False
        if not select.select([self.handle], [], [], wait_s)[0]:
            return True
        os.close(self.handle)
        self.handle = None
        return False


@contextlib.contextmanager
def nursery(program):
    """Let a nursery run; None where processes have no handles, as on a Mac."""
    if not hasattr(os, "pidfd_open"):
        yield None
        return
    kept = Nursery(program)
    try:
        yield kept
    finally:
        kept.close()


def _load():
    """Load the program, and make ready what each of its servers sends."""
    sys.path.insert(0, str(Path.cwd()))
    from server.api import shell
    from server.cli import main

    for name in ("bare", "make_page"):
        setattr(shell, name, functools.cache(getattr(shell, name)))
    shell.Shell(Path("static"), Path("server", "core")).worker()
    gc.freeze()  # shared with every child, as long as no collection touches it
    return main


def _be_server(main, words, arguments):
    os.setsid()
    signal.signal(signal.SIGCHLD, signal.SIG_DFL)
    nothing = os.open(os.devnull, os.O_RDONLY)
    said = os.open(words, os.O_WRONLY)
    for here, instead in ((nothing, 0), (said, 1), (said, 2)):
        os.dup2(here, instead)
    raise SystemExit(main(arguments))


def _keep():
    main = _load()
    signal.signal(signal.SIGCHLD, signal.SIG_IGN)  # nobody waits for the ended ones
    for line in sys.stdin:
        settings, words, *arguments = json.loads(line)
        child = os.fork()
        if child == 0:
            os.environ.clear()
            os.environ.update(settings)
            _be_server(main, words, arguments)
        sys.stdout.write(f"{child}\n")
        sys.stdout.flush()


if __name__ == "__main__":
    _keep()
