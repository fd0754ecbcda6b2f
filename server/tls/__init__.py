"""https in the make room: a root of the room's own and the server's certificate.

Browsers keep an app for use offline only behind a certificate that the phone
trusts, and no public authority vouches for a box without a public name. So the
room has a root of its own. A phone takes it once; what it may vouch for is
written into it, so that a stolen key opens no bank: the names of this room, and
addresses that only exist inside a network.

`lan` knows the addresses of this box, `names` what may be called what, `made`
makes certificates, `folder` keeps the files, `renewal` decides what is to be made
anew, `findings` says what is wrong in words, `own` looks at a certificate that the
owner brings, `context` hands new files to running workers, `watch` is the thread.
Certificates follow the real clock, also where the server's runs fast.
"""

from server.tls.findings import Finding
from server.tls.lan import lan_addresses
from server.tls.refused import TlsError
from server.tls.standing import Served, served, state

__all__ = ["Finding", "Served", "TlsError", "lan_addresses", "served", "state"]
