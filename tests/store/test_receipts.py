import pytest

from server.store import receipts


@pytest.fixture
def folder(app, tmp_path):
    """Give the data folder of an app that has not made its key yet."""
    app.extensions.pop(receipts.KEY)
    (tmp_path / receipts.NAME).unlink()
    with app.app_context():
        yield tmp_path


def test_a_receipt_proves_its_own_text_alone(folder):
    said = receipts.receipt_of("{}")
    assert receipts.is_receipt("{}", said)
    assert not receipts.is_receipt("[]", said)
    assert (folder / receipts.NAME).stat().st_mode & 0o077 == 0


def test_another_box_has_another_key(folder, app):
    said = receipts.receipt_of("{}")
    (folder / receipts.NAME).write_bytes(b"k" * 32)
    app.extensions.pop(receipts.KEY)
    assert not receipts.is_receipt("{}", said)


def test_on_a_full_disk_the_log_is_told_without_receipts(folder, monkeypatch, caplog):
    def full(*_):
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(receipts, "made_once", full)
    assert receipts.receipt_of("{}") == receipts.receipt_of("[]") == ""
    assert not receipts.is_receipt("{}", "")
    assert len(caplog.records) == 1
    monkeypatch.undo()
    assert receipts.receipt_of("{}") != ""


@pytest.mark.parametrize("content", [b"", b"short"])
def test_a_key_that_is_cut_short_proves_nothing(folder, content):
    (folder / receipts.NAME).write_bytes(content)
    assert receipts.receipt_of("{}") == ""
    assert not receipts.is_receipt("{}", "")
