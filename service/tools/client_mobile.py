"""The mobile clients, from the contract into build/mobile: Kotlin compiled and run against a live server, Swift read.

It needs Java 17, node with npm, and PyPI for the generator: what it fetches is named by hash. The Kotlin client stands
on HttpURLConnection, which every JVM and Android has, and kotlinx.serialization. No Swift compiler is to be had here:
every member of the generated models is held to have a type that is known, and the five lines are read against them.
"""

from __future__ import annotations

import json
import os
import shutil
import subprocess
import sys
import time
import venv
from pathlib import Path

from tools.client_schemas import REPOSITORY, Contract
from tools.live import serving
from tools.mobile_sources import kotlin_mended, swift_mended
from tools.swift_client import declared, unknown_types, unwritable
from tools.swift_program import unsaid

HERE = REPOSITORY / "clients" / "mobile"
BUILD = REPOSITORY / "build" / "mobile"
PINNED: dict[str, tuple[str, ...]] = {
    "kotlin": (
        "--library=jvm-okhttp4",
        f"--template-dir={HERE / 'kotlin_templates'}",
        "--additional-properties=serializationLibrary=kotlinx_serialization,generateOneOfAnyOfWrappers=true,"
        "enumPropertyNaming=UPPERCASE,enumUnknownDefaultCase=true,packageName=ductrun,hideGenerationTimestamp=true",
        "--name-mappings=size=size,entries=entries",
    ),
    "swift6": ("--additional-properties=projectName=Ductrun,enumUnknownDefaultCase=true,hideGenerationTimestamp=true",),
}
MENDED = {"kotlin": kotlin_mended, "swift6": swift_mended}
# an optional member that is not given must be left out: the service takes no null
_LEFT_OUT = ("encodeDefaults = true", "encodeDefaults = false\n            explicitNulls = false")


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
    """Generate a client of what is answered in JSON; the stream is left out, for which neither has a word, and
    the key, which is a header that the caller sets.
    """
    shutil.rmtree(folder, ignore_errors=True)
    folder.mkdir(parents=True)
    document = Contract().document
    del document["paths"]["/v1/batch/stream"], document["security"], document["components"]["securitySchemes"]
    for asked in Contract(document).operations:
        given = asked.described.get("parameters", [])
        asked.described["parameters"] = [one for one in given if one["in"] != "query" or one in asked.query]
    contract = BUILD / "contract.json"
    contract.write_text(json.dumps(document), encoding="utf-8")
    shutil.copy(HERE / "openapi-generator-ignore", folder / ".openapi-generator-ignore")
    command = ("generate", "-i", str(contract), "-g", language, "-o", str(folder), *PINNED[language])
    run(tools() / "openapi-generator-cli", *command)
    for path in folder.rglob("[Mm]odels/*.*"):
        path.write_text(MENDED[language](path.read_text(encoding="utf-8")), encoding="utf-8")


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
    if told.splitlines() != ["61 m", "violates 2", "422 #/length/value true", "61", "53"]:
        sys.exit(f"the Kotlin client told something else:\n{told}")
    seconds, size = time.perf_counter() - begun, out.stat().st_size // 1024
    return f"Kotlin: {len(sources)} files compiled to {size} KiB, its five lines run in {seconds:.1f} s"


def swift(folder: Path) -> str:
    """Read the Swift client: every object is there, every member of a known type, and five lines say what it has."""
    contract = Contract()
    untyped = frozenset(f"{name}.{member}" for name, member in contract.untyped)
    written = {path.stem for path in folder.rglob("Models/*.swift")}
    found = unknown_types(folder, untyped) + unwritable(folder)
    found += [f"{name} is not there" for name in contract.schemas if name not in written]
    found += unsaid(five_of_swift(), declared(folder))
    if found:
        sys.exit("Swift cannot know:\n" + "\n".join(found[:40]))
    return f"Swift: {len(written)} models and five lines read, every name known; not compiled, for want of a compiler"


def five_of_swift() -> str:
    """Give the Swift program without its imports."""
    text = (HERE / "Five.swift").read_text(encoding="utf-8")
    return text.partition("import Ductrun\n")[2]


def main() -> int:
    for language, judge in (("kotlin", kotlin), ("swift6", swift)):
        folder = BUILD / language
        generate(language, folder)
        sys.stdout.write(f"{judge(folder)}\n")
        sys.stdout.flush()
    return 0


if __name__ == "__main__":
    sys.exit(main())
