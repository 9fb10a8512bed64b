"""One live server for the clients of every language."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from tools.live import serving


@pytest.fixture(scope="package")
def address() -> Iterator[str]:
    with serving() as started:
        yield started
