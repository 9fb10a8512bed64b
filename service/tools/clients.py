"""Whether what is written of the clients is what the contract says; with --write, make it so.

Exits 1 and names the command that mends it if a file has drifted. What is not written here is written by hand.
"""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

from tools import client_typescript
from tools.client_calls import calls_of, table_of
from tools.client_models import models_of
from tools.client_schemas import REPOSITORY, Contract

CLIENT = REPOSITORY / "clients" / "python"
TYPESCRIPT = REPOSITORY / "clients" / "typescript"
TOOLS = Path(sys.executable).parent


def written(contract: Contract) -> dict[Path, str]:
    """Give every file that follows from the contract."""
    package = CLIENT / "ductrun_client"
    calls, in_a_loop = calls_of(contract, in_a_loop=False), calls_of(contract, in_a_loop=True)
    return {
        package / "models.py": formatted(models_of(contract)),
        package / "operations.py": formatted(table_of(contract)),
        package / "calls.py": formatted(calls),
        package / "async_calls.py": formatted(in_a_loop),
        TYPESCRIPT / "src" / "models.ts": client_typescript.models_of(contract),
        TYPESCRIPT / "src" / "calls.ts": client_typescript.calls_of(contract),
    }


def formatted(source: str) -> str:
    """Write a module the way the rest of the house is written, without an import that it does not use."""
    for command in (["check", "--fix", "--quiet", "--select", "F401,I"], ["format", "--line-length", "120"]):
        asked = [str(TOOLS / "ruff"), *command, "--no-cache", "--isolated", "-"]
        source = subprocess.run(asked, input=source, capture_output=True, text=True, check=True).stdout
    return source


def main() -> int:
    files = written(Contract())
    if "--write" in sys.argv:
        for path, text in files.items():
            path.write_text(text, encoding="utf-8")
        return 0
    changed = [
        str(path.relative_to(REPOSITORY))
        for path, text in files.items()
        if not path.exists() or path.read_text(encoding="utf-8") != text
    ]
    if changed:
        sys.stderr.write("\n".join(changed) + "\nThe clients have drifted from the contract: make clients\n")
    return 1 if changed else 0


if __name__ == "__main__":
    sys.exit(main())
