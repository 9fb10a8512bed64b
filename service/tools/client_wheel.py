"""The Python client as its users get it: a wheel, installed into an environment that holds nothing else.

What it needs is laid there from the environment of the checks: no network is asked, and pip finds all that it wants. It
must import there, with its types, and take no longer than a script bears; the examples of its README must be what
mypy --strict takes.
"""

from __future__ import annotations

import re
import shutil
import subprocess
import sys
import tempfile
import time
import venv
from importlib.metadata import files, requires
from pathlib import Path

from packaging.requirements import Requirement

from tools.client_schemas import REPOSITORY
from tools.clients import CLIENT

_LONGEST = 5.0  # seconds of an import, on a machine that is busy with other things
_USE = """
import importlib.util, pathlib, ductrun_client
assert importlib.util.find_spec("pint") is None and importlib.util.find_spec("ductrun") is None
assert "site-packages" in ductrun_client.__file__, ductrun_client.__file__
assert (pathlib.Path(ductrun_client.__file__).parent / "py.typed").exists()
client = ductrun_client.Client("http://127.0.0.1:9", timeout=1)
try:
    client.spacers(length=ductrun_client.models.Length(300, "ft"), tiers=[3])
except Exception as fault:
    assert type(fault).__name__ == "ConnectError", fault
else:
    raise AssertionError("something answered")
"""


def run(*command: str | Path, folder: Path = REPOSITORY) -> None:
    done = subprocess.run([str(part) for part in command], cwd=folder, capture_output=True, text=True, check=False)
    if done.returncode:
        sys.exit(f"{' '.join(map(str, command))}\n{done.stdout}{done.stderr}")


def needed() -> set[str]:
    """Give what the client needs, and what that needs."""
    found: set[str] = set()
    text = (CLIENT / "pyproject.toml").read_text(encoding="utf-8")
    left = re.findall(r'^  "([^"]+)",$', text.partition("dependencies = [")[2].partition("]")[0], re.MULTILINE)
    while left:
        requirement = Requirement(left.pop())
        name = re.sub(r"[-_.]+", "-", requirement.name).lower()
        if name not in found and (requirement.marker is None or requirement.marker.evaluate({"extra": ""})):
            found.add(name)
            left += requires(name) or []
    return found


def lay(names: set[str], site: Path) -> None:
    """Lay packages of this environment, which come from the lock, into another: nothing is fetched."""
    for name in names:
        for file in files(name) or []:
            if ".." not in file.parts and "__pycache__" not in file.parts:
                there = site / file
                there.parent.mkdir(parents=True, exist_ok=True)
                shutil.copy(file.locate(), there)


def examples_are_typed(folder: Path) -> None:
    """Hold every example of the README against mypy --strict."""
    text = (CLIENT / "README.md").read_text(encoding="utf-8")
    files = []
    for number, example in enumerate(re.findall(r"^```python\n(.*?)^```", text, re.MULTILINE | re.DOTALL)):
        files.append(folder / f"example_{number}.py")
        files[-1].write_text(example, encoding="utf-8")
    run(
        sys.executable,
        "-m",
        "mypy",
        "--strict",
        "--config-file",
        "",
        "--cache-dir",
        folder / "cache",
        *files,
        folder=CLIENT,
    )


def main() -> int:
    with tempfile.TemporaryDirectory() as made:
        folder = Path(made)
        venv.create(folder / "empty", with_pip=True)
        python = folder / "empty" / "bin" / "python"
        pip = (python, "-m", "pip", "--disable-pip-version-check")  # that of this environment may be gone
        source = folder / "source"
        run("cp", "-r", CLIENT, source)  # a build leaves its own folders behind
        build = ("--python", sys.executable, "wheel", "-q", "--no-deps", "--no-build-isolation")
        run(*pip, *build, "-w", folder, source)
        [wheel] = folder.glob("*.whl")
        [site] = (folder / "empty").glob("lib/python*/site-packages")
        lay(needed(), site)
        run(*pip, "install", "-q", "--no-index", wheel)
        run(python, "-I", "-c", _USE, folder=folder)
        begun = time.perf_counter()
        run(python, "-I", "-c", "import ductrun_client", folder=folder)
        took = time.perf_counter() - begun
        if took > _LONGEST:
            sys.exit(f"importing the client takes {took:.1f} s")
        sys.stdout.write(f"{wheel.name}: {wheel.stat().st_size / 1024:.0f} KiB, imported in {took:.2f} s\n")
        examples_are_typed(folder)
    return 0


if __name__ == "__main__":
    sys.exit(main())
