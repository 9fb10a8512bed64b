"""Keys of callers: kept as hashes, compared in constant time, several at once so that one can take another's place."""

from __future__ import annotations

import hashlib
import hmac
import secrets
from collections.abc import Sequence

from ductrun.http.problems import ProblemRaised

_CHALLENGE = ((b"www-authenticate", b'Bearer realm="ductrun"'),)
_SCHEME = b"bearer "


def hash_of(key: bytes) -> str:
    """Give what is kept of a key. It is random and long, so that one round is enough."""
    return hashlib.sha256(key).hexdigest()


def new_key() -> str:
    """Make a key."""
    return secrets.token_urlsafe(32)


class Keys:
    """The keys that are taken."""

    def __init__(self, hashes: Sequence[str]) -> None:
        """Keep the hashes."""
        self._hashes = tuple(hashes)

    def check(self, authorization: bytes) -> None:
        """Refuse a header without a key that is taken; how long it takes does not tell how near it was."""
        key = authorization[len(_SCHEME) :].strip()
        if authorization[: len(_SCHEME)].lower() != _SCHEME or not key:
            detail = "Send a key with the request: Authorization: Bearer KEY."
            raise ProblemRaised("key_missing", detail, headers=_CHALLENGE)
        given = hash_of(key)
        taken = [hmac.compare_digest(given, one) for one in self._hashes]
        if not any(taken):
            raise ProblemRaised("key_refused", "This key is not taken here.")
