"""Whether openapi/v1.json is what the code says; exits 1 and names the command that mends it if not."""

from __future__ import annotations

import difflib
import subprocess
import sys
from pathlib import Path

REPOSITORY = Path(__file__).resolve().parents[2]
CONTRACT = REPOSITORY / "openapi" / "v1.json"


def main() -> int:
    code = subprocess.run([sys.executable, "-m", "ductrun", "contract"], capture_output=True, text=True, check=True)
    kept = CONTRACT.read_text(encoding="utf-8")
    if code.stdout == kept:
        return 0
    changes = difflib.unified_diff(
        kept.splitlines(), code.stdout.splitlines(), "openapi/v1.json", "the code", lineterm=""
    )
    sys.stderr.write("\n".join(list(changes)[:60]) + "\n\n")
    sys.stderr.write("The contract has drifted from the code. If the change is meant: make contract clients\n")
    return 1


if __name__ == "__main__":
    sys.exit(main())
