"""A JSON Patch applied as RFC 6902 has it, written apart from the service."""

from __future__ import annotations

import copy
from typing import Any


def patched(document: Any, patch: list[dict[str, Any]]) -> Any:
    """Apply a patch; fails where RFC 6902 says that it must."""
    document = copy.deepcopy(document)
    for operation in patch:
        *path, last = operation["path"].split("/")[1:]
        node = document
        for step in path:
            node = node[int(step)] if isinstance(node, list) else node[step]
        if isinstance(node, list) and operation["op"] == "add":
            assert 0 <= int(last) <= len(node), "the index of what is added may be one past the end"
            node.insert(int(last), copy.deepcopy(operation["value"]))
        elif isinstance(node, list):
            node[int(last)] = copy.deepcopy(operation["value"])
        else:
            assert operation["op"] == "add" or last in node, "what is replaced must be there"
            node[last] = copy.deepcopy(operation["value"])
    return document
