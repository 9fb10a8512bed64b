"""Two contracts side by side: what of the newer one breaks a caller of the older.

What a caller sends may become wider, what he gets may become more: see openapi/COMPATIBILITY.md. A schema is looked at
from the side on which it stands: in a request a member that goes or is asked for anew breaks, in an answer one that
goes or may be absent. What may be of more kinds, or one of more values, breaks whoever reads it, unless the set is
marked `x-extensible-enum`. A set of units may grow in both: an answer has those that `units` names, and another only
where the caller sent it.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Any, NamedTuple

Node = dict[str, Any]
_AT_LEAST = ("minimum", "minItems", "minLength", "exclusiveMinimum")
_AT_MOST = ("maximum", "maxItems", "maxLength", "exclusiveMaximum")
_CHANGED_RUN = "Remedy.run"


class Break(NamedTuple):
    """One break: where it is (a path, or the members from a schema on), what happened, and what it happened to."""

    place: str
    said: str
    to: str = ""

    @property
    def name(self) -> str:
        """What changed: a value, a kind, a parameter, or the last member of the place."""
        return self.to or re.split(r"[ .]", self.place.replace("[]", ""))[-1]

    @property
    def root(self) -> str:
        """The schema, or the method and path, in which it lies."""
        schema = re.match(r"\w+(?=$|[.\[])", self.place)
        return schema[0] if schema else self.place.partition(",")[0]

    def __str__(self) -> str:
        """Write the sentence."""
        return f"{self.place}: {self.said}"


class Comparison:
    """Two contracts side by side."""

    def __init__(self, old: Node, new: Node) -> None:
        self.old = old
        self.new = new
        self._seen: set[tuple[str, str, bool]] = set()

    def breaks(self) -> Iterator[Break]:
        """Give every break."""
        for path, item in self.old["paths"].items():
            for method, was in item.items():
                now = self.new["paths"].get(path, {}).get(method)
                place = f"{method.upper()} {path}"
                if now is None:
                    yield Break(place, "is gone")
                    continue
                if was.get("operationId") != now.get("operationId"):
                    yield Break(place, f"its id was {was.get('operationId')}")
                if _asks(now.get("security", self.new.get("security"))) and not _asks(
                    was.get("security", self.old.get("security"))
                ):
                    yield Break(place, "asks for a key now", "security")
                yield from self._parameters(place, was, now)
                yield from self._contents(place, _content_of(was), _content_of(now), asked=True)
                yield from self._answers(place, was["responses"], now["responses"])

    def _parameters(self, place: str, was: Node, now: Node) -> Iterator[Break]:
        before = {one["name"]: one for one in was.get("parameters", ())}
        after = {one["name"]: one for one in now.get("parameters", ())}
        for name, one in before.items():
            if name not in after:
                yield Break(place, f"the parameter {name} is gone", name)
            elif one.get("in") != after[name].get("in"):
                yield Break(place, f"the parameter {name} was in the {one.get('in')}", name)
            else:
                yield from self._schema(f"{place}, parameter {name}", one["schema"], after[name]["schema"], asked=True)
        for name, one in after.items():
            if one.get("required") and not before.get(name, {}).get("required"):
                yield Break(place, f"the parameter {name} must be given now", name)

    def _answers(self, place: str, was: Node, now: Node) -> Iterator[Break]:
        for status, answer in was.items():
            if status not in now:
                yield Break(place, f"the status {status} is gone", str(status))
            else:
                for header in sorted(set(answer.get("headers", ())) - set(now[status].get("headers", ()))):
                    yield Break(place, f"the header {header} is gone", header)
                contents = answer.get("content", {}), now[status].get("content", {})
                yield from self._contents(f"{place}, {status}", *contents, asked=False)

    def _contents(self, place: str, was: Node, now: Node, *, asked: bool) -> Iterator[Break]:
        for media_type, content in was.items():
            if media_type not in now:
                yield Break(place, f"{media_type} is gone", media_type)
            else:
                for key in ("schema", "x-item-schema"):
                    yield from self._schema(place, content.get(key, {}), now[media_type].get(key, {}), asked=asked)

    def _schema(self, place: str, was: Node, now: Node, *, asked: bool) -> Iterator[Break]:
        yield from _bounds(place, was, now, asked=asked)  # those beside a reference
        if asked and was.get("default") != now.get("default"):
            yield Break(place, f"its default was {was.get('default')}")
        pair = (was.get("$ref", ""), now.get("$ref", ""), asked)
        if pair[0] and pair[1]:
            if pair in self._seen:
                return
            self._seen.add(pair)
            if pair[0] != pair[1]:
                yield Break(place, f"was called {pair[0].rsplit('/', 1)[1]}", pair[0].rsplit("/", 1)[1])
            place = pair[0].rsplit("/", 1)[1]
        was, now = _resolved(self.old, was), _resolved(self.new, now)
        if was.get("type") != now.get("type"):
            yield Break(place, f"was {was.get('type', 'a union')} and is {now.get('type', 'a union')}")
            return
        yield from _values(place, was, now, asked=asked)
        if pair[0]:
            yield from _bounds(place, was, now, asked=asked)
        yield from self._members(place, was, now, asked=asked)
        yield from self._variants(place, was, now, asked=asked)
        if "items" in was and "items" in now:
            yield from self._schema(f"{place}[]", was["items"], now["items"], asked=asked)

    def _members(self, place: str, was: Node, now: Node, *, asked: bool) -> Iterator[Break]:
        before, after = was.get("properties", {}), now.get("properties", {})
        needed, needs = set(was.get("required", ())), set(now.get("required", ()))
        for name, schema in before.items():
            if name not in after:
                yield Break(f"{place}.{name}", "is gone")
            elif asked or (name != "request" and f"{place}.{name}" != _CHANGED_RUN):
                # a request that comes back holds what was sent, and so does a remedy but for what it sets
                yield from self._schema(f"{place}.{name}", schema, after[name], asked=asked)
        if asked:
            yield from (Break(f"{place}.{name}", "must be given now") for name in sorted(needs - needed))
        else:
            yield from (Break(f"{place}.{name}", "may be absent now") for name in sorted((needed - needs) & set(after)))

    def _variants(self, place: str, was: Node, now: Node, *, asked: bool) -> Iterator[Break]:
        before, after = _kinds(was), _kinds(now)
        tags = [node.get("discriminator", {}).get("propertyName") for node in (was, now)]
        if before and tags[0] != tags[1]:
            yield Break(place, f"its kinds were told apart by {tags[0]}", str(tags[0]))
        for kind in before:
            if kind not in after:
                yield Break(place, f"the kind {kind} is gone", kind)
            else:
                yield from self._schema(f"{place} {kind}", before[kind], after[kind], asked=asked)
        if not asked and not now.get("x-extensible-enum"):
            yield from (Break(place, f"may be of the kind {kind} now", kind) for kind in after if kind not in before)


def _asks(security: Any) -> bool:
    """Say whether a key must be sent; none need be where an empty choice stands among them."""
    return bool(security) and {} not in security


def _content_of(operation: Node) -> Node:
    content: Node = operation.get("requestBody", {}).get("content", {})
    return content


def _resolved(document: Node, node: Node) -> Node:
    while "$ref" in node:
        beside = {key: value for key, value in node.items() if key != "$ref"}
        node = document["components"]["schemas"][node["$ref"].rsplit("/", 1)[1]] | beside
    return node


def _kinds(node: Node) -> dict[str, Node]:
    mapping = node.get("discriminator", {}).get("mapping", {})
    return {kind: {"$ref": reference} for kind, reference in mapping.items()}


def _values(place: str, was: Node, now: Node, *, asked: bool) -> Iterator[Break]:
    before = was.get("enum", [was["const"]] if "const" in was else None)
    after = now.get("enum", [now["const"]] if "const" in now else None)
    if asked and after is not None:
        yield from (
            Break(place, f"{value} is refused now", str(value) if before else "")
            for value in before or ["any other text"]
            if value not in after
        )
    if was.get("x-enum-varnames") != now.get("x-enum-varnames") and before == after:
        yield Break(place, "its values have other names in clients")
    if not asked and was.get("x-extensible-enum") and not now.get("x-extensible-enum"):
        yield Break(place, "may not grow any more")
    units = place.endswith("Unit")
    if not asked and before is not None and not now.get("x-extensible-enum") and not units:
        yield from (
            Break(place, f"may be {value} now", str(value) if after else "")
            for value in after or ["any text"]
            if value not in before
        )


def _bounds(place: str, was: Node, now: Node, *, asked: bool) -> Iterator[Break]:
    for names, side in ((_AT_LEAST, 1), (_AT_MOST, -1)):
        for name in names:
            before, after = was.get(name), now.get(name)
            if asked and after is not None and (before is None or (after - before) * side > 0):
                yield Break(place, f"{name} was {before} and is {after}")
    if not asked and was.get("type") == now.get("type") == "integer":
        yield from _wider(place, was, now)
    for name in ("uniqueItems", "multipleOf"):
        if asked and now.get(name) not in (None, False, was.get(name)):
            yield Break(place, f"{name} is asked now")
    for name, side in (("x-minimum", 1), ("x-maximum", -1)):
        bound, other = was.get(name), now.get(name)
        if not asked or other is None or bound == other:
            continue
        if bound is None or bound["unit"] != other["unit"] or (other["value"] - bound["value"]) * side > 0:
            yield Break(place, f"{name} was {bound} and is {other}")
    if asked and now.get("pattern") not in (None, was.get("pattern")):
        yield Break(place, "must match another pattern now")


def _wider(place: str, was: Node, now: Node) -> Iterator[Break]:
    """A whole number that may be larger than before does not fit where a client keeps it."""
    if was.get("format") != now.get("format"):
        yield Break(place, f"its format was {was.get('format')}")
    if was.get("maximum") is not None and now.get("maximum", float("inf")) > was["maximum"]:
        yield Break(place, f"maximum was {was['maximum']} and is {now.get('maximum')}")


def breaks(old: Node, new: Node) -> list[Break]:
    """Give every break of a caller of the old contract by the new one."""
    return list(Comparison(old, new).breaks())
