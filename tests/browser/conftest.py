"""Only `make docs-browser` runs these: they need Chromium and its driver, which not every machine has."""

from __future__ import annotations

import os
from collections.abc import Iterator

import pytest
from tools.live import serving

collect_ignore_glob = [] if os.environ.get("DUCTRUN_BROWSER") else ["test_*.py"]


@pytest.fixture(scope="session")
def address() -> Iterator[str]:
    with serving() as started:
        yield started
