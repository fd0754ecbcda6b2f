"""Workers end with the process that started them.

A server killed with -9 leaves its workers to themselves: one with a live viewer
would go on for minutes, and keep the next server and a restore out all the
while. Each worker therefore reads from a pipe that only the first process holds
open for writing; its end is the end of that process, however it came.
"""

import contextlib
import os
import signal
import threading

_pipe: tuple[int, int] | None = None


def begin() -> None:
    """Open the pipe, in the process that is to start the workers."""
    global _pipe
    _pipe = os.pipe()


def let_go() -> None:
    """Hold the pipe open no longer; call after a fork."""
    if _pipe is not None:
        os.close(_pipe[1])


def end_with_parent() -> None:
    """Tell this worker to stop as soon as its parent has ended; call after a fork."""
    let_go()
    end_with_first(os.getpid())


def end_with_first(process: int) -> None:
    """Tell a process to stop as soon as the first one has ended.

    Args:
        process: its number.
    """
    if _pipe is not None:
        known = (_pipe[0], process)
        threading.Thread(target=_wait, args=known, name="parent", daemon=True).start()


def _wait(reading: int, process: int) -> None:
    os.read(reading, 1)  # nobody ever writes, so this returns at its end
    with contextlib.suppress(ProcessLookupError):
        os.kill(process, signal.SIGTERM)
