"""A Swift model with a member nobody could compile is found; how the generator writes the others is known."""

from __future__ import annotations

from pathlib import Path

import pytest
from tools.client_mobile import unknown_types

CABLE = """
public struct Cable: Sendable, Codable {
    public var kind: Kind
    public var count: Int?
    public private(set) var lengths: [Length]?
    public enum Kind: String { case listed = "listed" }
}
"""
LENGTH = 'public struct Length: Codable {\n    public var value: Double\n    public var unit: String = "ft"\n}\n'
UNION = "public enum Part: Codable {\n    case typeCable(Cable)\n    case typeLength(Length)\n}\n"


@pytest.mark.parametrize(
    ("more", "found"),
    [
        ("", []),
        ("public struct A {\n    public var value: JSONValue?\n}\n", ["More.value: JSONValue?"]),
        ("public struct A {\n    public let all: [AnyCodable]\n}\n", ["More.all: [AnyCodable]"]),
        ("public enum A {\n    case typeBend(Bend)\n}\n", ["More.typeBend: Bend"]),
    ],
)
def test_a_member_of_no_known_type_is_found(tmp_path: Path, more: str, found: list[str]) -> None:
    models = tmp_path / "Sources" / "Models"
    models.mkdir(parents=True)
    for name, text in {"Cable": CABLE, "Length": LENGTH, "Part": UNION, "More": more}.items():
        (models / f"{name}.swift").write_text(text, encoding="utf-8")
    assert unknown_types(tmp_path) == found
