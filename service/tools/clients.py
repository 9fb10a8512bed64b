"""Whether clients/python is what its generator makes of the contract; with --write, make it so.

Exits 1 and names the command that mends it if the client has drifted, or if the generator had anything to warn of.
"""

from __future__ import annotations

import filecmp
import json
import os
import re
import shutil
import subprocess
import sys
import tempfile
from collections.abc import Iterator
from pathlib import Path
from typing import Any

REPOSITORY = Path(__file__).resolve().parents[2]
CLIENT = REPOSITORY / "clients" / "python"
TOOLS = Path(sys.executable).parent


def generate(target: Path) -> None:
    """Generate the client into a folder and lay the additions beside; a warning of the generator is a failure.

    The generator writes no call that is read while it is sent: the stream is left out of what it sees, and is one of
    the additions.
    """
    document = json.loads((REPOSITORY / "openapi" / "v1.json").read_text(encoding="utf-8"))
    del document["paths"]["/v1/batch/stream"]
    contract = target.parent / "contract.json"
    contract.write_text(json.dumps(document), encoding="utf-8")
    command = [
        str(TOOLS / "openapi-python-client"),
        "generate",
        "--path",
        str(contract),
        "--config",
        str(REPOSITORY / "clients" / "python.yaml"),
        "--custom-template-path",
        str(REPOSITORY / "clients" / "python_templates"),
        "--meta",
        "uv",
        "--output-path",
        str(target),
        "--overwrite",
        "--fail-on-warning",
    ]
    environment = os.environ | {"PATH": f"{TOOLS}{os.pathsep}{os.environ.get('PATH', '')}"}
    done = subprocess.run(command, capture_output=True, text=True, env=environment, check=False)
    if done.returncode:
        sys.exit(f"the generator of the Python client failed or warned:\n{done.stdout}{done.stderr}")
    unions = unions_of(document["components"]["schemas"])
    (target / "ductrun_client" / "unions.py").write_text(unions, encoding="utf-8")
    for addition in (REPOSITORY / "clients" / "python_additions").glob("*.py"):
        shutil.copy(addition, target / "ductrun_client")


def unions_of(schemas: dict[str, Any]) -> str:
    """Write the unions of the contract by their names, which the generator spells out wherever they stand."""
    told = [
        '"""The unions of the contract by name, and the kinds of each by its tag."""\n',
        "from typing import Final\n",
        "from . import models\n",
    ]
    for name, schema in schemas.items():
        if "oneOf" not in schema:
            continue
        variants = "\n    | ".join(f"models.{leaf}" for leaf in _leaves(schemas, name))
        told.append(f"{name} = (\n    {variants}\n)")
        tag, mapping = schema["discriminator"]["propertyName"], _names(schema)
        if not any("oneOf" in schemas[variant] for variant in mapping.values()):
            kinds = "".join(f'    "{value}": models.{variant},\n' for value, variant in mapping.items())
            table = re.sub(r"(?<=[a-z])(?=[A-Z])", "_", f"{name}By{tag.title()}").upper()
            told.append(f"{table}: Final[dict[str, type[{name}]]] = {{\n{kinds}}}")
    return "\n".join(told) + "\n"


def _names(schema: dict[str, Any]) -> dict[str, str]:
    return {value: place.rsplit("/", 1)[1] for value, place in schema["discriminator"]["mapping"].items()}


def _leaves(schemas: dict[str, Any], name: str) -> Iterator[str]:
    if "oneOf" not in schemas[name]:
        yield name
        return
    for variant in _names(schemas[name]).values():
        yield from _leaves(schemas, variant)


def differences(one: Path, other: Path) -> list[str]:
    """List the files that differ between two trees, byte for byte."""
    compared = filecmp.dircmp(one, other, ignore=["__pycache__", ".ruff_cache"])
    found = [str(Path(compared.left) / name) for name in compared.left_only + compared.right_only]
    _, changed, unreadable = filecmp.cmpfiles(one, other, compared.common_files, shallow=False)
    found += [str(Path(compared.left) / name) for name in changed + unreadable]
    for name in compared.common_dirs:
        found += differences(one / name, other / name)
    return found


def main() -> int:
    with tempfile.TemporaryDirectory() as folder:
        fresh = Path(folder) / "python"
        generate(fresh)
        if "--write" in sys.argv:
            shutil.rmtree(CLIENT, ignore_errors=True)
            shutil.copytree(fresh, CLIENT, ignore=shutil.ignore_patterns(".ruff_cache"))
            return 0
        changed = differences(fresh, CLIENT) if CLIENT.exists() else ["all of it"]
    if changed:
        sys.stderr.write("\n".join(changed[:20]) + "\nThe Python client has drifted from the contract: make clients\n")
    return 1 if changed else 0


if __name__ == "__main__":
    sys.exit(main())
