"""What a phone loads before it is used for the first time stays small."""

import json

import pytest

from deploy.pack_page import pack
from server.app import create_app
from server.config import Settings
from tests.conftest import ROOT
from tests.sync.phones import close_app

KB = 1024


@pytest.fixture(scope="module")
def shipped(tmp_path_factory):
    """Answer as the server of a checkout that is set up."""
    pack()
    folder = tmp_path_factory.mktemp("first-load")
    app = create_app(Settings(data_dir=folder, static_dir=ROOT / "static"))
    yield app.test_client()
    close_app(app)


@pytest.mark.parametrize(
    ("taken", "most_kb"), [("br, gzip", 320), ("gzip", 400)], ids=["brotli", "gzip"]
)
def test_the_first_load_keeps_to_its_figure(shipped, taken, most_kb):
    line = shipped.get("/sw.js").text.split("\n", 1)[0]
    listed = json.loads(line.removeprefix("const SHELL = ").rstrip(";"))
    sizes = {}
    for name in ["/sw.js", *listed["files"]]:
        answer = shipped.get(name, headers={"Accept-Encoding": taken})
        assert answer.status_code == 200, name
        sizes[name] = len(answer.data) + len(str(answer.headers))
    assert "/lib/page.js" in sizes, "not packed"
    assert sum(sizes.values()) <= most_kb * KB, sorted(sizes.items(), key=size_of)


def size_of(row):
    return -row[1]
