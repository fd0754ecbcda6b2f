"""A refusal is data: which claim fails, of which field, its value and the limit.

The catalogues of the page say it in a person's language, in that person's units.
Nothing reads the text of the exception; it is for whoever reads a traceback.
"""


class Refused(ValueError):  # noqa: N818 -- it is an answer, not a fault
    """A value that cannot be true.

    `key` is the claim that fails, said as `refused.<key>` in the catalogues; `field`
    the argument's name; `value` what was given, in the field's unit; `limit` what it
    fails against, in the field's unit too, or [low, high], or the words it must be
    one of, or None; `figures` is {name: number} that the sentence speaks of besides,
    each name ending in its unit.
    """

    def __init__(
        self,
        key: str,
        field: str,
        value: object,
        limit: object = None,
        **figures: object,
    ) -> None:
        """Keep the refusal's parts.

        Args:
            key: the claim that fails.
            field: name of the argument.
            value: what was given.
            limit: what it fails against, or None.
            figures: what else the sentence speaks of.
        """
        super().__init__(_text(key, field, value, limit, figures))
        self.key = key
        self.field = field
        self.value = value
        self.limit = limit
        self.figures = figures


def _text(
    key: str, field: str, value: object, limit: object, figures: "dict[str, object]"
) -> str:
    words = [field, repr(value), key] + ([] if limit is None else [repr(limit)])
    for name in sorted(figures):
        words.append("%s %r" % (name, figures[name]))
    return " ".join(words)


def require(
    claim: bool,
    key: str,
    field: str,
    value: object,
    limit: object = None,
    **figures: object,
) -> None:
    """Refuse a value unless a claim about it holds.

    Args:
        claim: what must be true of the value.
        key: what is wrong with it if it is not.
        field: name of the argument, as the caller knows it.
        value: what was given.
        limit: what it fails against, or None; see `Refused`.
        figures: what else the sentence speaks of.

    Raises:
        Refused: the claim is false.

    >>> require(70 < 60, "beyond_jacket", "target_c", 70, 60)
    Traceback (most recent call last):
    ...
    server.core.numbers.refused.Refused: target_c 70 beyond_jacket 60
    """
    if not claim:
        raise Refused(key, field, value, limit, **figures)
