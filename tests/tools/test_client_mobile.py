"""A Swift model or program that nobody could compile is found; how the generator writes the others is known."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from tools.client_mobile import five_of_swift
from tools.client_schemas import Contract
from tools.swift_client import declared, unknown_types, unwritable
from tools.swift_program import unsaid

CABLE = """
public struct Cable: Sendable, Codable {

    public enum Kind: String {
        case listed = "listed"
    }
    public var kind: Kind
    public var count: Int?
    public private(set) var lengths: [Length]?

    public init(count: Int? = nil, kind: Kind, lengths: [Length]? = nil) {
        self.kind = kind
    }
}
"""
LENGTH = """
public struct Length: Codable {
    public var unit: LengthUnit
    public var value: Double

    public init(unit: LengthUnit, value: Double) {
        self.unit = unit
    }
}
"""
UNIT = 'public enum LengthUnit: String, Codable {\n    case FT = "ft"\n    case M = "m"\n}\n'
CALLS = """
open class CablesAPI {

    open class func ask(part: Part, units: LengthUnit? = nil) async throws(ErrorResponse) -> Length {
        return try await askWithRequestBuilder(part: part).execute().body
    }

    open class func askWithRequestBuilder(part: Part) -> RequestBuilder<Length> {
    }
}
"""
UNION = "public enum Part: Codable {\n    case typeCable(Cable)\n    case typeLength(Length)\n}\n"


@pytest.mark.parametrize(
    ("more", "found"),
    [
        ("", []),
        ("public struct A {\n    public var value: JSONValue?\n}\n", ["A.value: JSONValue"]),
        ("public struct A {\n    public let all: [AnyCodable]\n}\n", ["A.all: [AnyCodable]"]),
        ("public enum A {\n    case typeBend(Bend)\n}\n", ["A.typeBend: Bend"]),
    ],
)
def test_a_member_of_no_known_type_is_found(tmp_path: Path, more: str, found: list[str]) -> None:
    assert unknown_types(client(tmp_path, more)) == found


def client(folder: Path, more: str = "") -> Path:
    models, calls = folder / "Sources" / "Models", folder / "Sources" / "APIs"
    for place in (models, calls):
        place.mkdir(parents=True)
    texts = {"Cable": CABLE, "Length": LENGTH, "LengthUnit": UNIT, "Part": UNION, "More": more}
    for name, text in texts.items():
        (models / f"{name}.swift").write_text(text, encoding="utf-8")
    (calls / "CablesAPI.swift").write_text(CALLS, encoding="utf-8")
    return folder


def test_a_member_that_the_contract_leaves_open_may_be_of_any_type(tmp_path: Path) -> None:
    folder = client(tmp_path, "public struct A {\n    public var value: JSONValue\n}\n")
    assert unknown_types(folder, frozenset({"A.value"})) == []
    assert Contract().untyped == [("PatchOperation", "value")]


def test_a_name_that_swift_keeps_for_itself_or_that_stands_twice_is_found(tmp_path: Path) -> None:
    folder = client(tmp_path, 'public enum A: String {\n    case import = "a"\n    case NM\n    case NM\n}\n')
    assert unwritable(folder) == ["A.import", "A.NM", "A.NM"]


PROGRAM = """
let long = Length(unit: .FT, value: 300)
let cable = Cable(count: 3, kind: .listed, lengths: [long])  // a comment
let answer = try await CablesAPI.ask(part: .typeCable(cable), units: LengthUnit.M)
print(answer.value)
print(cable.lengths![0].unit)
"""


@pytest.mark.parametrize(
    ("written", "instead", "told"),
    [
        ("", "", None),
        (".FT", ".ft", "LengthUnit has no case ft, but FT"),
        ("unit: .FT, value: 300", "value: 300, unit: .FT", "no 'value' can stand here: it takes unit, value"),
        (", value: 300", "", "value must be given"),
        ("300", '"300"', '"300" is no Double'),
        ("kind: .listed, ", "", "no 'lengths' can stand here"),
        ("[long]", "long", "Length is given where [Length] is asked"),
        ("typeCable", "typeDuct", "Part has no case typeDuct"),
        ("typeCable(cable)", "typeCable(long)", "Length is given where Cable is asked"),
        ("CablesAPI.ask", "CablesAPI.asks", "CablesAPI has no case asks"),
        ("CablesAPI", "CableAPI", "there is no CableAPI"),
        ("LengthUnit.M", "LengthUnit.YD", "LengthUnit has no case YD"),
        ("answer.value", "answer.values", "Length has no member values"),
        ("count: 3", "count: 3.5", "3.5 is no Int"),
        ("print(answer.value)", "print(answer.value) 3", "'3' stands after its end"),
    ],
)
def test_a_program_says_only_what_the_client_has(tmp_path: Path, written: str, instead: str, told: str | None) -> None:
    found = unsaid(PROGRAM.replace(written, instead), declared(client(tmp_path)))
    assert (found == []) if told is None else (told in found[0]), found


def test_the_cases_of_the_program_that_is_read_are_those_of_the_contract() -> None:
    """Without the generator: its cases are the names that the contract gives to texts."""
    schemas = Contract().schemas
    names = {name for schema in schemas.values() for name in schema.get("x-enum-varnames", ())}
    cases = set(re.findall(r"(?<=[ (\[])\.(\w+)(?!\()", five_of_swift()))
    assert {"FT", "SIZE_2", "PVC_SCHEDULE_40"} <= cases <= names
