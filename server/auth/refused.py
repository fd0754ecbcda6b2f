"""One way to say no."""

from typing import Any


class RefusedError(Exception):
    """Something was asked that may not be; nothing was changed.

    Args:
        key: why, as a key that is put into words elsewhere.
        field: what it is about, if one field.
        limit: the limit that was met, if there is one.
        wait_s: how long to wait before asking again [s]; None for never.
    """

    def __init__(
        self,
        key: str,
        field: str | None = None,
        limit: Any = None,
        wait_s: int | None = None,
    ) -> None:
        super().__init__(key)
        self.key = key
        self.field = field
        self.limit = limit
        self.wait_s = wait_s
