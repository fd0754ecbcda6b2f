"""What is said when a certificate cannot be made or used."""


class TlsError(ValueError):
    """A certificate cannot be made or used; the text says what to do."""
