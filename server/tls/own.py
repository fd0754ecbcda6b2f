"""Look at a certificate that the owner brings."""

from pathlib import Path
from typing import NamedTuple

from cryptography import x509
from cryptography.x509.oid import ExtendedKeyUsageOID

from server.tls.findings import Finding, validity
from server.tls.folder import fits, is_open, read_certificates, read_key
from server.tls.made import names_of
from server.tls.names import is_name_in
from server.tls.refused import TlsError

RENEW = (
    "Renew it where it came from; the server takes the new files up by itself, "
    "without a restart."
)


class Pair(NamedTuple):
    """A certificate that was read, and where its key is."""

    chain: list[x509.Certificate]
    key: Path


def read_pair(certificate: Path, key: Path) -> Pair:
    """Return an owner's certificate once its key has been found to fit.

    Args:
        certificate: file of the certificate, with its chain.
        key: file of its key.

    Raises:
        TlsError: one cannot be read, or they do not belong together.
    """
    chain = read_certificates(certificate)
    if not fits(read_key(key), chain[0]):
        raise TlsError(
            f"The key in {key} does not fit the certificate in {certificate}. They "
            "must come from the same order: name both files of the newest one."
        )
    return Pair(chain, key)


def own_findings(pair: Pair, host: str, now_ms: int) -> list[Finding]:
    """Return all that is to be seen to with an owner's certificate.

    Args:
        pair: the certificate.
        host: the host that phones open; empty when none is set.
        now_ms: now, by the real clock [ms].
    """
    first = pair.chain[0]
    return [
        *validity(first, now_ms, RENEW),
        *_of_use(first),
        *_of_host(first, host),
        *_of_chain(pair.chain),
        *_of_mode(pair.key),
    ]


def _of_use(first: x509.Certificate) -> list[Finding]:
    try:
        uses = first.extensions.get_extension_for_class(x509.ExtendedKeyUsage).value
    except x509.ExtensionNotFound:
        return []
    if ExtendedKeyUsageOID.SERVER_AUTH in uses:
        return []
    text = "The certificate is not for servers (its use is not serverAuth)."
    return [Finding("not_for_servers", text)]


def _of_host(first: x509.Certificate, host: str) -> list[Finding]:
    names = names_of(first)
    if not names.dns and not names.addresses:
        text = (
            "The certificate lists no name that browsers look at (a subject "
            "alternative name). Order one for the name that phones open."
        )
        return [Finding("no_names", text)]
    if not host or host in names.addresses or any(_is(host, one) for one in names.dns):
        return []
    listed = ", ".join((*names.dns, *names.addresses))
    text = (
        f"VATSIDE_URL names {host}, and the certificate is for {listed}. Phones would "
        "refuse it: set VATSIDE_URL to one of these, or order another certificate."
    )
    return [Finding("name_not_listed", text)]


def _is(host: str, listed: str) -> bool:
    if listed.startswith("*."):
        return host.count(".") == listed.count(".") and is_name_in(host, [listed[2:]])
    return host.lower() == listed.lower()


def _of_chain(chain: list[x509.Certificate]) -> list[Finding]:
    if len(chain) > 1 or chain[0].issuer == chain[0].subject:
        return []
    text = (
        "The file holds the server's certificate alone. Most authorities sign by an "
        "intermediate one, and phones refuse a certificate that comes without it: use "
        "the file that holds the whole chain (often called fullchain.pem)."
    )
    return [Finding("chain_missing", text)]


def _of_mode(key: Path) -> list[Finding]:
    if not is_open(key):
        return []
    text = f"Other users of this box may read the key in {key}. Run: chmod 600 {key}."
    return [Finding("key_open", text)]
