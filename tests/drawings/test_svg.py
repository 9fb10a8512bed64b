"""The writer: what may stand in a drawing, how text is kept, and colours that can be told from their ground."""

from __future__ import annotations

import base64
import hashlib
import re

import pytest
from ductrun.drawings.registry import DRAWINGS
from ductrun.drawings.svg import (
    _COLOURS,
    STYLE,
    STYLE_HASH,
    Drawing,
    number,
    plain,
    shortened,
    text_width,
    wrapped,
)
from ductrun.kit.telling import US
from hypothesis import given
from hypothesis import strategies as st

from tests.drawings.made import assessed
from tests.drawings.seen import SPACE, read, texts_of, told, words_of

ELEMENTS = {"svg", "title", "desc", "style", "rect", "path", "circle", "text"}


@pytest.mark.parametrize("operation", DRAWINGS)
def test_a_drawing_has_no_script_no_id_and_no_reference(operation: str) -> None:
    svg = DRAWINGS[operation](assessed(operation), US)
    for node in read(svg).iter():
        assert node.tag.removeprefix(SPACE) in ELEMENTS
        assert not {"id", "href", "style"} & set(node.attrib)
        assert not [name for name in node.attrib if name.startswith("on")]
    assert "url(" not in svg
    assert "@import" not in svg
    assert "<!" not in svg
    assert "NaN" not in svg
    assert svg.startswith('<svg xmlns="http://www.w3.org/2000/svg"')


@pytest.mark.parametrize("operation", DRAWINGS)
def test_a_drawing_says_what_it_is(operation: str) -> None:
    svg = DRAWINGS[operation](assessed(operation), US)
    root = read(svg)
    assert root.attrib["role"] == "img"
    assert [child.tag.removeprefix(SPACE) for child in root][:3] == ["title", "desc", "style"]
    title, description = told(svg)
    assert len(title) > 4
    assert len(description) > 40
    assert root.findtext(f"{SPACE}style") == STYLE


@pytest.mark.parametrize("operation", DRAWINGS)
def test_every_colour_has_its_style_and_stands_beside_it_for_where_none_is_allowed(operation: str) -> None:
    svg = DRAWINGS[operation](assessed(operation), US)
    for node in read(svg).iter():
        for role in node.attrib.get("class", "").split():
            if role == "ductrun-drawing":
                continue
            kind, colour = role.split("-")
            assert f".{role}{{" in STYLE
            assert node.attrib[{"f": "fill", "s": "stroke"}[kind]] == _COLOURS[colour][0]


def test_the_hash_is_that_of_the_style() -> None:
    assert "sha256-" + base64.b64encode(hashlib.sha256(STYLE.encode()).digest()).decode() == STYLE_HASH
    assert "prefers-color-scheme:dark" in STYLE
    assert "@media screen" in STYLE  # a print is on white paper, whatever the screen


def brightness(colour: str) -> float:
    """Give the relative luminance of a colour (WCAG 2.1)."""
    parts = [int(colour[at : at + 2], 16) / 255 for at in (1, 3, 5)]
    linear = [part / 12.92 if part <= 0.04045 else ((part + 0.055) / 1.055) ** 2.4 for part in parts]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


@pytest.mark.parametrize("scheme", [0, 1])
@pytest.mark.parametrize("role", ["ink", "soft", "limit", "there", "back"])
def test_text_and_lines_can_be_told_from_their_ground(role: str, scheme: int) -> None:
    grounds = ["paper"] if role != "ink" else ["paper", "earth", "sand", "concrete"]
    for ground in grounds:
        bright, dark = sorted((brightness(_COLOURS[name][scheme]) for name in (role, ground)), reverse=True)
        assert (bright + 0.05) / (dark + 0.05) >= 4.5, (role, ground)


def test_text_is_escaped_and_never_interpreted() -> None:
    drawing = Drawing()
    name = '</text><script>alert("1")</script>&amp;'
    drawing.text(10.0, 20.0, name)
    svg = drawing.written(name, name)
    assert "<script" not in svg
    assert words_of(svg) == [name]
    assert told(svg) == (name, name)


@given(st.text())
def test_any_text_can_be_written(text: str) -> None:
    drawing = Drawing()
    drawing.note(text)
    drawing.text(10.0, 20.0, text, bold=True)
    title, _ = told(drawing.written(text, "what it is"))
    assert title == plain(text).replace("\u00a0", " ")


@given(st.text(), st.floats(9.0, 14.0), st.floats(20.0, 340.0))
def test_a_text_is_cut_to_its_room(text: str, size: float, room: float) -> None:
    cut = shortened(text, size, room)
    assert text_width(cut, size) <= room
    assert cut == plain(text) or cut.endswith("\u2026")
    for line in wrapped(text, size, room):
        assert text_width(line, size) <= room


def test_a_text_near_the_edge_is_moved_onto_the_sheet() -> None:
    drawing = Drawing()
    drawing.text(359.0, 20.0, "to the right")
    drawing.text(1.0, 40.0, "to the left", anchor="end")
    drawing.text(2.0, 60.0, "   ")
    right, left = texts_of(drawing.written("a", "b"))
    assert right.right <= 360.0
    assert left.left >= 0.0


@pytest.mark.parametrize(
    ("value", "text"), [(1.0, "1"), (1.25, "1.25"), (-0.001, "0"), (0.126, "0.13"), (1200.0, "1200"), (-3.5, "-3.5")]
)
def test_a_number_is_written_to_the_hundredth(value: float, text: str) -> None:
    assert number(value) == text


@pytest.mark.parametrize("value", [float("nan"), float("inf")])
def test_a_number_that_is_not_finite_is_never_drawn(value: float) -> None:
    with pytest.raises(ArithmeticError):
        number(value)


def test_classes_of_a_drawing_do_not_meet_those_of_a_page() -> None:
    assert not re.findall(r"(?:^|})(?!\.ductrun-drawing|@media)[^{}]+{", STYLE)
