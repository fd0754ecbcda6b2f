"""Make the room's root and the server's certificate."""

from datetime import UTC, datetime, timedelta
from ipaddress import ip_address, ip_network
from typing import NamedTuple

from cryptography import x509
from cryptography.hazmat.primitives import hashes
from cryptography.hazmat.primitives.asymmetric import ec
from cryptography.x509.oid import ExtendedKeyUsageOID, NameOID

from server.tls.names import Names, Network, is_address_in, is_name_in

ROOT_DAYS = 3650
# Phones refuse longer ones of public authorities, and may one day of all.
LEAF_DAYS = 397
# A phone whose clock lags, or a box whose clock was ahead when it made them,
# must not read "not yet valid".
BACKDATED_DAYS = 30


class Made(NamedTuple):
    """A certificate with its key."""

    certificate: x509.Certificate
    key: ec.EllipticCurvePrivateKey


class Permitted(NamedTuple):
    """What a root may vouch for."""

    dns: tuple[str, ...]
    networks: tuple[Network, ...]

    def of(self, names: Names) -> Names:
        """Return those of the names that the root may vouch for.

        Args:
            names: names and addresses of this server.
        """
        return Names(
            tuple(name for name in names.dns if is_name_in(name, self.dns)),
            tuple(one for one in names.addresses if is_address_in(one, self.networks)),
        )


def instant(at_ms: int) -> datetime:
    """Return an instant as certificates hold it, to the second.

    Args:
        at_ms: the instant [ms since 1970 UTC].
    """
    return datetime.fromtimestamp(at_ms // 1000, UTC)


def make_root(permitted: Permitted, label: str, now_ms: int) -> Made:
    """Make a root that may vouch for the names of one room only.

    Args:
        permitted: what it may vouch for.
        label: what tells this root from another in a phone's list.
        now_ms: now, by the real clock [ms].
    """
    key = ec.generate_private_key(ec.SECP256R1())
    name = _subject(f"Vatside {label}"[:64])
    start = instant(now_ms) - timedelta(days=BACKDATED_DAYS)
    end = start + timedelta(days=ROOT_DAYS)
    limits = x509.NameConstraints(
        [
            *(x509.DNSName(one) for one in permitted.dns),
            *(x509.IPAddress(one) for one in permitted.networks),
        ],
        None,
    )
    certificate = (
        _begun(name, name, key.public_key(), start, end)
        .add_extension(x509.BasicConstraints(ca=True, path_length=0), critical=True)
        .add_extension(_usage(sign_certificates=True), critical=True)
        .add_extension(limits, critical=True)
        .sign(key, hashes.SHA256())
    )
    return Made(certificate, key)


def make_leaf(root: Made, names: Names, now_ms: int) -> Made:
    """Make the server's own certificate.

    Args:
        root: the room's root with its key.
        names: what it is for; the root may vouch for all of it.
        now_ms: now, by the real clock [ms].
    """
    key = ec.generate_private_key(ec.SECP256R1())
    start = instant(now_ms) - timedelta(days=BACKDATED_DAYS)
    start = max(start, root.certificate.not_valid_before_utc)
    end = start + timedelta(days=LEAF_DAYS)
    end = min(end, root.certificate.not_valid_after_utc)
    listed = x509.SubjectAlternativeName(
        [
            *(x509.DNSName(one) for one in names.dns),
            *(x509.IPAddress(ip_address(one)) for one in names.addresses),
        ]
    )
    issuer = root.key.public_key()
    certificate = (
        _begun(
            _subject("Vatside server"),
            root.certificate.subject,
            key.public_key(),
            start,
            end,
        )
        .add_extension(x509.BasicConstraints(ca=False, path_length=None), critical=True)
        .add_extension(_usage(sign_certificates=False), critical=True)
        .add_extension(
            x509.ExtendedKeyUsage([ExtendedKeyUsageOID.SERVER_AUTH]), critical=False
        )
        .add_extension(listed, critical=False)
        .add_extension(
            x509.AuthorityKeyIdentifier.from_issuer_public_key(issuer), critical=False
        )
        .sign(root.key, hashes.SHA256())
    )
    return Made(certificate, key)


def _subject(name: str) -> x509.Name:
    return x509.Name([x509.NameAttribute(NameOID.COMMON_NAME, name)])


def _begun(
    subject: x509.Name,
    issuer: x509.Name,
    key: ec.EllipticCurvePublicKey,
    start: datetime,
    end: datetime,
) -> x509.CertificateBuilder:
    return (
        x509.CertificateBuilder()
        .subject_name(subject)
        .issuer_name(issuer)
        .public_key(key)
        .serial_number(x509.random_serial_number())
        .not_valid_before(start)
        .not_valid_after(end)
        .add_extension(x509.SubjectKeyIdentifier.from_public_key(key), critical=False)
    )


def _usage(sign_certificates: bool) -> x509.KeyUsage:
    return x509.KeyUsage(
        digital_signature=not sign_certificates,
        key_cert_sign=sign_certificates,
        content_commitment=False,
        key_encipherment=False,
        data_encipherment=False,
        key_agreement=False,
        crl_sign=False,
        encipher_only=False,
        decipher_only=False,
    )


def permitted_by(root: x509.Certificate) -> Permitted:
    """Return what a root may vouch for.

    Args:
        root: the root's certificate.
    """
    limits = root.extensions.get_extension_for_class(x509.NameConstraints).value
    rows = limits.permitted_subtrees or []
    return Permitted(
        tuple(row.value for row in rows if isinstance(row, x509.DNSName)),
        tuple(ip_network(str(row.value)) for row in rows if _is_network(row)),
    )


def _is_network(row: x509.GeneralName) -> bool:
    return isinstance(row, x509.IPAddress)


def names_of(certificate: x509.Certificate) -> Names:
    """Return the names and addresses that a certificate is for.

    Args:
        certificate: a server's certificate.
    """
    try:
        found = certificate.extensions.get_extension_for_class(
            x509.SubjectAlternativeName
        )
    except x509.ExtensionNotFound:
        return Names((), ())
    dns = found.value.get_values_for_type(x509.DNSName)
    addresses = found.value.get_values_for_type(x509.IPAddress)
    return Names(tuple(dns), tuple(str(one) for one in addresses))


def fingerprint(certificate: x509.Certificate) -> str:
    """Return a certificate's SHA-256 as phones show it: pairs of hex digits.

    Args:
        certificate: the certificate.
    """
    return certificate.fingerprint(hashes.SHA256()).hex(":").upper()


def starts_ms(certificate: x509.Certificate) -> int:
    """Return from when on a certificate holds [ms since 1970 UTC].

    Args:
        certificate: the certificate.
    """
    return int(certificate.not_valid_before_utc.timestamp()) * 1000


def ends_ms(certificate: x509.Certificate) -> int:
    """Return until when a certificate holds [ms since 1970 UTC].

    Args:
        certificate: the certificate.
    """
    return int(certificate.not_valid_after_utc.timestamp()) * 1000
