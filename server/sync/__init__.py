"""Events from phones and to phones. No web framework here.

    push(body, sender, now_ms)   take a batch, answer one verdict an item
    pull(epoch, after, limit)    give the log from a number on
    take_back(kept, …)           take what a log set back lacks from who had read it
    have(device)                 say which of a phone's own numbers are here
    settle(n, …)                 let a person decide what the log did not take

All need the store, thus a running app's context.
"""

from server.sync.have import have
from server.sync.kept import take_back
from server.sync.pull import MOST_BYTES, WrongEpoch, pull
from server.sync.push import MAX_EVENTS, PushAnswer, Sender, push
from server.sync.quota import OverQuotaError, Quota
from server.sync.settle import settle

__all__ = [
    "MAX_EVENTS",
    "MOST_BYTES",
    "OverQuotaError",
    "PushAnswer",
    "Quota",
    "Sender",
    "WrongEpoch",
    "have",
    "pull",
    "push",
    "settle",
    "take_back",
]
