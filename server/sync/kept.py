"""Take back what this log once gave out and, set back to a backup, lacks now."""

from typing import Any

from server.core.log.rights.proof import ACCEPTED, OLD_PIN
from server.shapes import Problem, Verdict
from server.store import held, writing
from server.store.head import locked_head
from server.store.pulled import was_pulled
from server.sync.items import Item, read_item
from server.sync.push import Desk, Sender, as_now, spend
from server.sync.quota import Quota


def take_back(
    kept: list[Any], sender: Sender, now_ms: int, quota: Quota | None = None
) -> list[Verdict]:
    """Keep what a phone gives back of others' events, in the log or aside.

    Args:
        kept: list of {"event", "receipt", "proof_state"} as the phone had read
            them; any JSON values.
        sender: the phone, which need not be who made them.
        now_ms: server time [ms].
        quota: what the phone may send in a day; None for any amount. What was here
            once costs it nothing, however much was lost.

    Returns:
        One verdict an item, in the same order.

    Raises:
        OverQuotaError: what is to be put aside does not fit into the phone's day.
    """
    batch = [read_item(_of(row, "event")) for row in kept]
    proven = {
        item.sha256
        for item, row in zip(batch, kept, strict=True)
        if was_pulled(item.text, _state(row), _of(row, "receipt"))
    }
    with writing():
        locked_head()
        desk = _ProvenDesk(batch, as_now(sender), proven)
        for item, row in zip(batch, kept, strict=True):
            if item.id is not None and item.sha256 in proven:
                desk.proof_states[item.id] = _state(row)
        results = [desk.judge(item) for item in batch]
        spend(sender.device, desk.texts_aside(), quota, now_ms)
        desk.keep(results, now_ms)
        for device, seqs in desk.seqs.items():
            held.count_held(device, seqs)
    return results


def _state(row: Any) -> str | None:
    state = _of(row, "proof_state")
    return state if state in (OLD_PIN, ACCEPTED) else None


def _of(row: Any, name: str) -> Any:
    return row.get(name) if isinstance(row, dict) else None


class _ProvenDesk(Desk):
    """Judges as for a push, but for what is proven to have been in the log."""

    def __init__(self, batch: list[Item], sender: Sender, proven: set[str]) -> None:
        super().__init__(batch, sender)
        self.proven = proven

    def _why_not(self, item: Item, same: str | None) -> list[Problem]:
        # Its form, too, was judged then: a limit may be tighter by now.
        if same is None and item.id is not None and item.sha256 in self.proven:
            return []
        return super()._why_not(item, same)

    def _counts_for(self, item: Item) -> str | None:
        return item.uuid("device") if item.sha256 in self.proven else None
