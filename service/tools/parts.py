"""Writes build/parts.json: what the service is made of, as a CycloneDX list, from what is installed and its lock."""

from __future__ import annotations

import json
import re
import sys
from importlib import metadata
from typing import Any

from ductrun import __version__

from tools.live import REPOSITORY

_LOCKED = re.compile(
    r"^([a-z0-9-]+)==(\S+)((?: ;[^\\\n]*)?)(?: \\)?\n((?:    --hash=sha256:[0-9a-f]+(?: \\)?\n)+)", re.MULTILINE
)


def parts(lock: str) -> list[dict[str, Any]]:
    """Give each part of a lock with its licence, where it is installed."""
    found = []
    for name, version, marker in _LOCKED.findall(lock):
        part: dict[str, Any] = {
            "type": "library",
            "name": name,
            "version": version,
            "purl": f"pkg:pypi/{name}@{version}",
        }
        licence = _licence(name)
        if licence:
            part["licenses"] = [{"license": {"name": licence}}]
        if marker:
            part["properties"] = [{"name": "marker", "value": marker.lstrip(" ;")}]
        found.append(part)
    return found


def _licence(name: str) -> str:
    try:
        told: Any = metadata.metadata(name)
    except metadata.PackageNotFoundError:
        return ""
    classified = [one.rpartition(" :: ")[2] for one in told.get_all("Classifier", []) if one.startswith("License ::")]
    return told.get("License-Expression") or ", ".join(classified) or (told.get("License") or "").partition("\n")[0]


def document() -> dict[str, Any]:
    """Give the whole list."""
    lock = (REPOSITORY / "requirements.lock").read_text(encoding="utf-8")
    service = {
        "type": "application",
        "name": "ductrun",
        "version": __version__,
        "licenses": [{"license": {"id": "MIT"}}],
    }
    return {
        "bomFormat": "CycloneDX",
        "specVersion": "1.6",
        "version": 1,
        "metadata": {"component": service},
        "components": parts(lock),
    }


def main() -> int:
    told = document()
    folder = REPOSITORY / "build"
    folder.mkdir(exist_ok=True)
    (folder / "parts.json").write_text(json.dumps(told, indent=2) + "\n", encoding="utf-8")
    for part in told["components"]:
        licences = [one["license"]["name"] for one in part.get("licenses", [])]
        print(f"{part['name']:22} {part['version']:12} {', '.join(licences) or 'not installed here'}")
    return 0


if __name__ == "__main__":
    sys.exit(main())
