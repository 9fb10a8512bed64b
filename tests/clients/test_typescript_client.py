"""The TypeScript client, compiled with its tests and the examples of its README, and run under node."""

from __future__ import annotations

import json
import os
import re
import shutil
import subprocess
from pathlib import Path

import pytest
from tools.clients import TYPESCRIPT

pytestmark = pytest.mark.live
README = (TYPESCRIPT / "README.md").read_text(encoding="utf-8")
EXAMPLES = re.findall(r"^```ts\n(.*?)^```", README, re.MULTILINE | re.DOTALL)


@pytest.fixture(scope="module")
def compiled(tmp_path_factory: pytest.TempPathFactory, address: str) -> Path:
    """Compile the client, its tests and the examples as one program, as strictly as the client itself."""
    assert (TYPESCRIPT / "node_modules").exists(), "the compiler is not there yet: make node-modules"
    folder = tmp_path_factory.mktemp("typescript")
    for name in ("src", "test"):
        shutil.copytree(TYPESCRIPT / name, folder / name)
    for name in ("package.json", "tsconfig.json"):
        shutil.copy(TYPESCRIPT / name, folder)
    (folder / "node_modules").symlink_to(TYPESCRIPT / "node_modules")
    for number, example in enumerate(EXAMPLES):
        text = example.replace('"ductrun-client"', '"../src/index.js"').replace("http://127.0.0.1:8000", address)
        (folder / "test" / f"example_{number}.ts").write_text(text, encoding="utf-8")
    options = {"rootDir": ".", "types": ["node"], "skipLibCheck": True, "declaration": False}
    settings = {"extends": "./tsconfig.json", "compilerOptions": options, "include": ["src", "test"]}
    (folder / "tsconfig.test.json").write_text(json.dumps(settings), encoding="utf-8")
    done = subprocess.run(
        ["node", "node_modules/typescript/bin/tsc", "-p", "tsconfig.test.json"],
        cwd=folder,
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 0, done.stdout
    return folder / "dist" / "test"


def node(*arguments: str | Path, **environment: str) -> subprocess.CompletedProcess[str]:
    asked = ["node", *map(str, arguments)]
    return subprocess.run(asked, capture_output=True, text=True, check=False, timeout=60, env=os.environ | environment)


def test_the_client_keeps_its_word_under_node(compiled: Path, address: str) -> None:
    done = node("--test", "--test-reporter=tap", compiled / "live.js", DUCTRUN_URL=address)
    assert done.returncode == 0, done.stdout
    assert re.search(r"# pass (1[5-9]|2\d)\n# fail 0\n", done.stdout), done.stdout


@pytest.mark.parametrize(
    ("number", "told"),
    [(0, r"61 \[.*\]\s*"), (1, r"#/length/value out_of_range .* undefined\s*"), (2, r"true\s*")],
)
def test_an_example_of_the_readme_runs_as_it_stands(number: int, told: str, compiled: Path) -> None:
    assert len(EXAMPLES) == 3
    done = node(compiled / f"example_{number}.js")
    assert re.fullmatch(told, done.stdout, re.DOTALL), done.stdout + done.stderr
