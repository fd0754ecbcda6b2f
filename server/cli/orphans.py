"""Workers end with the process that started them.

A server killed with -9 leaves its workers to themselves: one with a live viewer
would go on for minutes, and keep the next server and a restore out all the
while. Each worker therefore reads from a pipe that only the first process holds
open for writing; its end is the end of that process, however it came.
"""

import os
import signal
import threading

_pipe: tuple[int, int] | None = None


def begin() -> None:
    """Open the pipe, in the process that is to start the workers."""
    global _pipe
    _pipe = os.pipe()


def end_with_parent() -> None:
    """Tell this worker to stop as soon as its parent has ended; call after a fork."""
    if _pipe is None:
        return
    reading, writing = _pipe
    os.close(writing)
    threading.Thread(target=_wait, args=(reading,), name="parent", daemon=True).start()


def _wait(reading: int) -> None:
    os.read(reading, 1)  # nobody ever writes, so this returns at its end
    os.kill(os.getpid(), signal.SIGTERM)
