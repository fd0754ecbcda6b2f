"""Fold the log on the server, with the very code that runs on the phones.

Each process keeps one desk and takes only what is new since its last look. A
restored backup is another log, so a new epoch begins a new desk.
"""

import logging
import threading
from collections.abc import Callable, Sequence
from typing import Any

from server.config import read_rules
from server.core import desk as core_desk
from server.core.log import apart
from server.live.stream import ReadAfter
from server.shapes.core.state import Desk
from server.store.pulled import as_filed

BATCH = 2000

log = logging.getLogger(__name__)


def _tell(stream: str, what: str, fault: Exception) -> None:
    # Once for each fault: the desk remembers it until the make can be shown again.
    log.error("make %s: %s cannot be worked out", stream, what, exc_info=fault)


apart.LISTENERS.append(_tell)


class Folds:
    """The makes of one server, as last folded.

    Args:
        read_epoch: returns which life of the database this is.
        read_after: reads entries of the log in order.
    """

    def __init__(self, read_epoch: Callable[[], str], read_after: ReadAfter) -> None:
        self._read_epoch = read_epoch
        self._read_after = read_after
        self._lock = threading.Lock()
        self._epoch = ""
        self._n = 0
        self._desk: Desk = _new_desk()

    def ask(self, question: Callable[..., Any], *args: object) -> Any:
        """Put a question to the core about the log as it stands now.

        Args:
            question: function of the core that takes the desk first.
            *args: its other arguments.

        Returns:
            What the core answers.
        """
        # The desk changes while it takes events, so one thread at a time.
        with self._lock:
            self._catch_up()
            return question(self._desk, *args)

    def _catch_up(self) -> None:
        epoch = self._read_epoch()
        if epoch != self._epoch:
            self._epoch, self._n, self._desk = epoch, 0, _new_desk()
        while True:
            rows: Sequence[dict[str, Any]] = self._read_after(self._n, BATCH)
            if not rows:
                return
            core_desk.take(self._desk, [as_filed(row) for row in rows])
            self._n = rows[-1]["n"]


def _new_desk() -> Desk:
    desk: Desk = core_desk.new()
    core_desk.set_rules(desk, read_rules())
    return desk
