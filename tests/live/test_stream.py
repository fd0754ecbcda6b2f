import json

from server.live.stream import entries, greeting

HELLO = {"head": 0, "now": 1000, "rate": 1, "epoch": "e"}


def test_a_stream_begins_with_the_pause_before_reconnecting_and_the_head():
    wanted = f"retry: 3000\n\nevent: head\ndata: {json.dumps(HELLO)}\n\n"
    assert greeting(HELLO).decode() == wanted


def test_an_entry_carries_its_number_as_the_place_to_come_back_to():
    row = {"n": 7, "recv_ms": 1007, "event": {"id": "x", "data": {"text": "a\nb"}}}
    first, second, *rest = entries([row]).decode().split("\n")
    assert first == "id: 7"
    assert json.loads(second.removeprefix("data: ")) == row
    assert rest == ["", ""]
