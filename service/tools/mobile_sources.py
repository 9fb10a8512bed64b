"""What the generators of the mobile clients write amiss, mended: tags that are typed out, and docs no editor shows.

A tag is a text that is fixed, such as the `kind` of an object: whoever makes the object need not say it again.
"""

from __future__ import annotations

import re

_KOTLIN_CASES = re.compile(
    r'enum class (\w+)\(val value: kotlin\.String\) \{\n *@SerialName\(value = "[^"]*"\) (\w+)\("[^"]*"\),\n'
    r' *@SerialName\(value = "unknown_default_open_api"\)'
)
_KOTLIN_MEMBER = r"^( *)(@SerialName\(value = \"\w+\"\)\n *val \w+: {kind})(,?)$"
_KOTLIN_DOCS = re.compile(r"^    /\* (.*) \*/$", re.M)
_KOTLIN_CLASS = re.compile(r"^data class (\w+) \(\n.*?^\)", re.M | re.S)
_SWIFT_CASES = re.compile(
    r'^    public enum (\w+): String,[^\n]*\{\n        case (\w+) = "[^"]*"\n        case unknownDefaultOpenApi =', re.M
)
_SWIFT_INIT = re.compile(r"^    public init\(.*\) \{$", re.M)


def kotlin_mended(text: str) -> str:
    """Give a Kotlin model whose docs are docs, and whose tags are there unless something else is said."""
    found = _KOTLIN_CLASS.search(text)
    if found is None:
        return text
    declared = _KOTLIN_DOCS.sub(r"    /** \1 */", found[0])
    for kind, case in _KOTLIN_CASES.findall(text):
        name = f"{found[1]}.{kind}"
        member = re.compile(_KOTLIN_MEMBER.format(kind=re.escape(name)), re.M)
        # a default is left out of what is sent, but not this one
        declared = member.sub(rf"\1@kotlinx.serialization.EncodeDefault \2 = {name}.{case}\3", declared)
    return text.replace(found[0], declared)


def swift_mended(text: str) -> str:
    """Give a Swift model whose tags are there unless something else is said."""
    made = _SWIFT_INIT.search(text)
    if made is None:
        return text
    declared = made[0]
    for kind, case in _SWIFT_CASES.findall(text):
        declared = re.sub(rf"(\w+: {kind})(?=[,)])", rf"\1 = .{case}", declared)
    return text.replace(made[0], declared)
