import stat
import threading

import pytest
from cryptography.hazmat.primitives import serialization
from cryptography.hazmat.primitives.asymmetric import rsa

from server.alarm import keys


def test_a_key_is_made_once_and_only_its_owner_may_read_it(tmp_path):
    first = keys.public_text(keys.private_key(tmp_path))
    assert keys.public_text(keys.private_key(tmp_path)) == first
    mode = (tmp_path / keys.NAME).stat().st_mode
    assert stat.S_IMODE(mode) == 0o600
    assert [path.name for path in tmp_path.iterdir()] == [keys.NAME]


def test_workers_that_start_at_once_agree_on_one_key(tmp_path):
    start, found = threading.Barrier(8), []

    def make():
        start.wait()
        found.append(keys.public_text(keys.private_key(tmp_path)))

    threads = [threading.Thread(target=make) for _ in range(8)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert len(found) == 8
    assert len(set(found)) == 1


def test_the_public_half_is_an_uncompressed_point(tmp_path):
    # SEC 1 section 2.3.3: 0x04 and two numbers of 32 bytes; in base64, 87 signs.
    text = keys.public_text(keys.private_key(tmp_path))
    assert len(text) == 87
    assert text.startswith("B")


def test_another_sort_of_key_is_refused(tmp_path):
    other = rsa.generate_private_key(public_exponent=65537, key_size=2048)
    pem = other.private_bytes(
        serialization.Encoding.PEM,
        serialization.PrivateFormat.PKCS8,
        serialization.NoEncryption(),
    )
    (tmp_path / keys.NAME).write_bytes(pem)
    with pytest.raises(ValueError, match="is not a key for pushes"):
        keys.private_key(tmp_path)
