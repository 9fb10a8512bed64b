"""Whether the contract of today breaks a caller; exits 1 and names every break that may not be.

No caller of a released contract may be broken. Until there is one, and beside it, a break of the contract that landed
last must stand in openapi/CHANGELOG.md.
"""

from __future__ import annotations

import json
import sys
from pathlib import Path

from tools.comparison import breaks
from tools.contract import CONTRACT
from tools.landed import changelog_before, contract_before, unlisted

RELEASED = CONTRACT.parent / "released"
CHANGELOG = CONTRACT.parent / "CHANGELOG.md"


def released(contracts: list[Path]) -> list[str]:
    """Give every break of a released contract."""
    today = json.loads(CONTRACT.read_text(encoding="utf-8"))
    return [
        f"{path.name}: {found}" for path in contracts for found in breaks(json.loads(path.read_text("utf-8")), today)
    ]


def landed() -> list[str]:
    """Give every break of the contract that landed last which the changelog does not list."""
    before = contract_before(CONTRACT)
    if before is None:
        sys.stderr.write("No contract before this one is in the git history here: changes are not looked at.\n")
        return []
    today = json.loads(CONTRACT.read_text(encoding="utf-8"))
    listed = changelog_before(CONTRACT, CHANGELOG)
    found = unlisted(before, today, CHANGELOG.read_text(encoding="utf-8"), listed)
    return [f"not listed in openapi/CHANGELOG.md: {one}" for one in found]


def main(arguments: list[str]) -> int:
    """Hold the contract of today against those named, or against every released one and the one that landed last."""
    found = released([Path(one) for one in arguments]) if arguments else released(sorted(RELEASED.glob("*.json")))
    if not arguments:
        found += landed()
    sys.stderr.write("".join(f"{one}\n" for one in found))
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
