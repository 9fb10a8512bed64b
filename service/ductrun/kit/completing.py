"""A request completed: what was assumed is set in its place, so that sent again it assumes nothing."""

from __future__ import annotations

import copy
from typing import Any

from ductrun.kit.worksheet import Book


def completed(body: Any, book: Book) -> Any:
    """Give a request, as JSON has it, with every default of its book; objects that hold only defaults are made."""
    body = copy.deepcopy(body)
    contested = {pointer for pointer, _ in book.contested}  # no one value would give the same answer
    for pointer, default in book.settled.items():
        if pointer in contested:
            continue
        *path, last = pointer[2:].split("/")
        node = body
        for step in path:
            node = node[int(step)] if isinstance(node, list) else node.setdefault(step, {})
        node[int(last) if isinstance(node, list) else last] = default.given
    return body
