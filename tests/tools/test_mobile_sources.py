"""Tags are there by themselves in the mobile clients, and are sent; docs stand where an editor finds them."""

from __future__ import annotations

from tools.mobile_sources import kotlin_mended, swift_mended

KOTLIN = """
data class Bend (

    /* How far it turns. */
    @SerialName(value = "angle")
    val angle: Angle,

    /* Fixed text that says: a bend. */
    @SerialName(value = "kind")
    val kind: Bend.Kind,

    @SerialName(value = "turn")
    val turn: Bend.Turn

) {

    enum class Kind(val value: kotlin.String) {
        @SerialName(value = "bend") BEND("bend"),
        @SerialName(value = "unknown_default_open_api") UNKNOWN_DEFAULT_OPEN_API("unknown_default_open_api");
    }

    enum class Turn(val value: kotlin.String) {
        @SerialName(value = "left") LEFT("left"),
        @SerialName(value = "right") RIGHT("right"),
        @SerialName(value = "unknown_default_open_api") UNKNOWN_DEFAULT_OPEN_API("unknown_default_open_api");
    }
}
"""
SWIFT = """
public struct Bend: Sendable, Codable, Hashable {

    public enum Kind: String, Sendable, Codable, CaseIterable, CaseIterableDefaultsLast {
        case bend = "bend"
        case unknownDefaultOpenApi = "unknown_default_open_api"
    }
    public enum Turn: String, Sendable, Codable, CaseIterable, CaseIterableDefaultsLast {
        case left = "left"
        case right = "right"
        case unknownDefaultOpenApi = "unknown_default_open_api"
    }
    public var kind: Kind

    public init(angle: Angle, kind: Kind, turn: Turn) {
        self.kind = kind
    }
}
"""


def test_a_tag_of_kotlin_need_not_be_given_and_is_sent_all_the_same() -> None:
    mended = kotlin_mended(KOTLIN)
    assert '    @kotlinx.serialization.EncodeDefault @SerialName(value = "kind")\n' in mended
    assert "    val kind: Bend.Kind = Bend.Kind.BEND,\n" in mended
    assert "    val angle: Angle,\n" in mended
    assert "    val turn: Bend.Turn\n" in mended
    assert mended.count("EncodeDefault") == 1


def test_what_kotlin_says_of_a_member_is_shown_by_an_editor() -> None:
    assert "    /** How far it turns. */\n" in kotlin_mended(KOTLIN)


def test_a_tag_of_swift_need_not_be_given() -> None:
    assert "public init(angle: Angle, kind: Kind = .bend, turn: Turn) {" in swift_mended(SWIFT)


def test_what_has_no_tags_is_left_as_it_is() -> None:
    for text in ("enum class A {}\n", "public enum A {}\n"):
        assert kotlin_mended(text) == swift_mended(text) == text
