"""The mobile clients, from the contract into build/mobile: Kotlin compiled and run against a live server, Swift read.

It needs Java 17, node with npm, and PyPI for the generator: what it fetches is named by hash. The Kotlin client stands
on HttpURLConnection, which every JVM and Android has, and kotlinx.serialization. No Swift compiler is to be had here:
every member of the generated models is held to have a type that is known.
"""

from __future__ import annotations

import json
import os
import re
import shutil
import subprocess
import sys
import time
import venv
from pathlib import Path

from tools.client_schemas import REPOSITORY, Contract
from tools.live import serving

HERE = REPOSITORY / "clients" / "mobile"
BUILD = REPOSITORY / "build" / "mobile"
PINNED: dict[str, tuple[str, ...]] = {
    "kotlin": (
        "--library=jvm-okhttp4",
        f"--template-dir={HERE / 'kotlin_templates'}",
        "--additional-properties=serializationLibrary=kotlinx_serialization,generateOneOfAnyOfWrappers=true,"
        "enumPropertyNaming=UPPERCASE,enumUnknownDefaultCase=true,packageName=ductrun,hideGenerationTimestamp=true",
    ),
    "swift6": ("--additional-properties=projectName=Ductrun,enumUnknownDefaultCase=true,hideGenerationTimestamp=true",),
}
# an optional member that is not given must be left out: the service takes no null
_LEFT_OUT = ("encodeDefaults = true", "encodeDefaults = false\n            explicitNulls = false")
_KNOWN = {"String", "Double", "Int", "Int32", "Bool"}


def run(*command: str | Path, folder: Path = REPOSITORY) -> str:
    done = subprocess.run([str(part) for part in command], cwd=folder, capture_output=True, text=True, check=False)
    if done.returncode:
        sys.exit(f"{' '.join(map(str, command))[:300]}\n{done.stdout[-3000:]}{done.stderr[-3000:]}")
    return done.stdout


def tools() -> Path:
    """Fetch what generates and compiles, unless it is there; give the folder of its commands."""
    lock, place = HERE / "requirements.lock", BUILD / "tools"
    stamp = place / ".made"
    if not stamp.exists() or stamp.stat().st_mtime < lock.stat().st_mtime:
        venv.create(place, with_pip=True, clear=True)
        pip = (str(place / "bin" / "python"), "-m", "pip", "--disable-pip-version-check")
        run(*pip, "install", "-q", "--no-deps", "--only-binary", ":all:", "--require-hashes", "-r", lock)
        run("npm", "ci", "--ignore-scripts", "--no-audit", "--no-fund", "--silent", folder=HERE)
        stamp.touch()
    return place / "bin"


def generate(language: str, folder: Path) -> None:
    """Generate a client; the stream is left out, which neither generator has a word for, and the key, which is a header
    that the caller sets.
    """
    shutil.rmtree(folder, ignore_errors=True)
    folder.mkdir(parents=True)
    document = Contract().document
    del document["paths"]["/v1/batch/stream"], document["security"], document["components"]["securitySchemes"]
    contract = BUILD / "contract.json"
    contract.write_text(json.dumps(document), encoding="utf-8")
    shutil.copy(HERE / "openapi-generator-ignore", folder / ".openapi-generator-ignore")
    command = ("generate", "-i", str(contract), "-g", language, "-o", str(folder), *PINNED[language])
    run(tools() / "openapi-generator-cli", *command)


def kotlin(folder: Path) -> str:
    """Compile the Kotlin client with its five lines, and run them."""
    serializer = next(folder.rglob("Serializer.kt"))
    text = serializer.read_text(encoding="utf-8")
    if _LEFT_OUT[0] not in text:
        sys.exit("the generator writes its serializer in another way: see to it that no null is sent")
    serializer.write_text(text.replace(*_LEFT_OUT), encoding="utf-8")
    compiler = HERE / "node_modules" / "kotlin-compiler"
    [jars] = (BUILD / "tools").rglob("run_kotlin_kernel/jars")
    path = os.pathsep.join(str(jar) for jar in sorted(jars.glob("kotlinx-serialization-*.jar")))
    plugin = compiler / "lib" / "kotlinx-serialization-compiler-plugin.jar"
    sources = [*sorted((folder / "src" / "main" / "kotlin").rglob("*.kt")), HERE / "Five.kt"]
    out = BUILD / "ductrun.jar"
    options = ("-J-Xmx3g", "-nowarn", f"-Xplugin={plugin}", "-cp", path, "-d", out)
    run("bash", compiler / "bin" / "kotlinc", *options, *sources)
    standard = compiler / "lib" / "kotlin-stdlib.jar"
    with serving() as address:
        begun = time.perf_counter()
        told = run("java", "-cp", os.pathsep.join([str(out), path, str(standard)]), "FiveKt", address)
    if told.splitlines() != ["61 m", "violates 2", "422 #/length/value", "61", "53"]:
        sys.exit(f"the Kotlin client told something else:\n{told}")
    seconds, size = time.perf_counter() - begun, out.stat().st_size // 1024
    return f"Kotlin: {len(sources)} files compiled to {size} KiB, its five lines run in {seconds:.1f} s"


def unknown_types(folder: Path) -> list[str]:
    """Give every member of the Swift models whose type is none that is known."""
    texts = {path.stem: path.read_text(encoding="utf-8") for path in folder.rglob("Models/*.swift")}
    defined = {name for text in texts.values() for name in re.findall(r"\b(?:struct|enum|class) (\w+)", text)} | _KNOWN
    found = []
    for name, text in texts.items():
        members = re.findall(r"^    public (?:private\(set\) )?(?:var|let) (\w+): ([^={\n]+)", text, re.MULTILINE)
        cases = re.findall(r"^    case (\w+)\((\w+)\)", text, re.MULTILINE)
        for member, written in members + cases:
            kind = written.strip().strip("[]?")
            if kind not in defined:
                found.append(f"{name}.{member}: {written.strip()}")
    return found


def swift(folder: Path) -> str:
    """Read the Swift models: a member of an unknown type is a fault, and so is an object that is not there."""
    found = unknown_types(folder)
    written = {path.stem for path in folder.rglob("Models/*.swift")}
    found += [f"{name} is not there" for name in Contract().schemas if name not in written]
    if found:
        sys.exit("Swift cannot know:\n" + "\n".join(found[:40]))
    return f"Swift: {len(written)} models read, every member of a known type; not compiled, for want of a compiler"


def main() -> int:
    for language, judge in (("kotlin", kotlin), ("swift6", swift)):
        folder = BUILD / language
        generate(language, folder)
        sys.stdout.write(f"{judge(folder)}\n")
        sys.stdout.flush()
    return 0


if __name__ == "__main__":
    sys.exit(main())
