"""A certificate that the owner brings, judged before phones do it."""

import pytest
from cryptography.hazmat.primitives.serialization import Encoding

from server.config import Settings
from server.tls import state
from server.tls.folder import key_pem, write_whole
from server.tls.made import Permitted, ends_ms, make_leaf, make_root
from server.tls.names import PRIVATE, Names
from server.tls.own import own_findings, read_pair
from server.tls.refused import TlsError
from server.tls.renewal import DAY_MS
from tests.tls.conftest import NOW_MS, days

HOST = "floor.creamery.example"


@pytest.fixture(scope="module")
def authority():
    return make_root(Permitted(("creamery.example",), PRIVATE), "authority", NOW_MS)


@pytest.fixture
def brought(tmp_path, authority):
    """Give a function that brings a certificate; return its two files."""

    def bring(dns=(HOST,), chain=True):
        leaf = make_leaf(authority, Names(dns, ()), NOW_MS)
        parts = [leaf, authority] if chain else [leaf]
        pem = b"".join(one.certificate.public_bytes(Encoding.PEM) for one in parts)
        write_whole(tmp_path / "cert.pem", pem)
        write_whole(tmp_path / "key.pem", key_pem(leaf.key))
        return tmp_path / "cert.pem", tmp_path / "key.pem"

    return bring


def findings(files, host=HOST, at_ms=NOW_MS):
    return {one.key: one.text for one in own_findings(read_pair(*files), host, at_ms)}


def test_a_certificate_that_fits_has_nothing_to_see_to(brought):
    assert findings(brought()) == {}
    assert findings(brought(), host="") == {}
    assert findings(brought(dns=("*.creamery.example",))) == {}


def test_a_certificate_that_does_not_fit_its_key_is_refused(brought, tmp_path):
    cert, key = brought()
    first = tmp_path / "first.pem"
    first.write_bytes(key.read_bytes())
    brought()
    with pytest.raises(TlsError, match=r"does not fit the certificate.*same order"):
        read_pair(cert, first)


def test_a_locked_key_is_refused(brought, authority, tmp_path):
    cert, key = brought()
    write_whole(key, key_pem(authority.key, "cellar"))
    with pytest.raises(TlsError, match="locked with a passphrase"):
        read_pair(cert, key)


def test_a_name_that_phones_open_and_the_certificate_lacks_is_named(brought):
    said = findings(brought(), host="vat.creamery.example")["name_not_listed"]
    assert "vat.creamery.example" in said
    assert HOST in said
    deeper = brought(dns=("*.creamery.example",))
    assert "name_not_listed" in findings(deeper, host="a.b.creamery.example")
    assert "name_not_listed" in findings(deeper, host="creamery.example")


def test_a_certificate_without_its_chain_is_named(brought):
    assert "fullchain.pem" in findings(brought(chain=False))["chain_missing"]


def test_an_end_near_or_past_is_said_with_where_to_renew(brought):
    files = brought()
    end_ms = ends_ms(read_pair(*files).chain[0])
    assert findings(files, at_ms=end_ms - 22 * DAY_MS) == {}
    assert (
        "Renew it where it came from"
        in (findings(files, at_ms=end_ms - 20 * DAY_MS)["ends_soon"])
    )
    assert "ended" in findings(files, at_ms=days(500))


def test_a_key_that_others_may_read_is_named(brought):
    cert, key = brought()
    key.chmod(0o640)
    assert f"chmod 600 {key}" in findings((cert, key))["key_open"]


def test_the_state_tells_of_an_owners_certificate_too(brought, tmp_path):
    cert, key = brought()
    settings = Settings(data_dir=tmp_path, tls_cert=cert, tls_key=key)
    told = state(settings, NOW_MS)
    assert told["findings"] == []
    assert told["renews_ms"] is None
    cert.write_text("nothing")
    assert state(settings, NOW_MS) == {
        "ends_ms": None,
        "renews_ms": None,
        "findings": ["unreadable"],
    }
