"""The docs page in a real browser: as a job goes, tried out, by keyboard, on a phone; nothing from elsewhere."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

import pytest
from ductrun.http.descriptions import subject_of
from ductrun.subjects import OPERATIONS
from tools.client_schemas import REPOSITORY

from tests.browser.driver import ENTER, TAB, Browser, browser

PICTURES = REPOSITORY / "build" / "browser"
SHOWN = "return [...document.querySelectorAll('.opblock-summary-path')].map(one => one.dataset.path)"
GROUPS = "return [...document.querySelectorAll('h3.opblock-tag')].map(one => one.dataset.tag)"


@pytest.fixture(scope="module")
def desk() -> Iterator[Browser]:
    with browser(width=1280, height=1000) as opened:
        yield opened


@pytest.fixture
def page(desk: Browser, address: str) -> Browser:
    desk.go(f"{address}/docs")
    desk.wait(lambda: desk.run(SHOWN))
    return desk


def block(operation_id: str) -> str:
    return f"[id$='-{operation_id}']"


def test_operations_stand_by_subject_in_the_order_of_a_job(page: Browser) -> None:
    subjects = list(dict.fromkeys(subject_of(operation) for operation in OPERATIONS))
    assert page.run(GROUPS) == [*subjects, "batches", "tables", "health"]
    shown = page.run(SHOWN)
    for subject in subjects:
        paths = [f"/v1/{operation.name}" for operation in OPERATIONS if subject_of(operation) == subject]
        assert [path for path in shown if path in paths] == paths
    page.picture(PICTURES / "desk.png")


@pytest.mark.parametrize("operation", OPERATIONS, ids=lambda operation: operation.name)
def test_an_operation_shows_its_worked_example_and_is_answered_when_tried(operation: Any, page: Browser) -> None:
    here = block(operation.operation_id)
    page.click(f"{here} .opblock-summary-control")
    example = f"return document.querySelector(\"{here} .responses-inner .example\")?.textContent || ''"
    assert '"working"' in page.wait(lambda: page.run(example))
    page.click(f"{here} .try-out__btn")
    page.click(f"{here} .execute")
    status = f'return document.querySelector("{here} .live-responses-table tbody td.response-col_status")?.textContent'
    assert str(page.wait(lambda: page.run(status))).startswith("200")
    body = f'return document.querySelector("{here} .live-responses-table tbody .response-col_description").textContent'
    assert '"findings"' in page.run(body)
    behind = "return [...document.querySelectorAll('pre code')].map(one => getComputedStyle(one).backgroundColor)"
    assert set(page.run(behind)) == {"rgba(0, 0, 0, 0)"}  # light letters lie on the dark of their box
    page.picture(PICTURES / f"{operation.name}.png")


def test_the_page_is_used_by_keyboard_and_shows_where_one_is(page: Browser) -> None:
    focus = "const one = document.activeElement; return [one.className, one.getAttribute('aria-expanded')]"
    for _ in range(60):
        page.press(TAB)
        name, expanded = page.run(focus)
        if name == "opblock-summary-control":
            break
    assert (name, expanded) == ("opblock-summary-control", "false")
    outline = "const style = getComputedStyle(document.activeElement); return [style.outlineStyle, style.outlineWidth]"
    assert page.run(outline)[0] != "none"
    page.picture(PICTURES / "keyboard.png")
    page.press(ENTER)
    assert page.wait(lambda: page.run("return document.querySelectorAll('.opblock.is-open').length")) == 1
    assert page.run(focus) == ["opblock-summary-control", "true"]


def test_nothing_comes_from_elsewhere_and_the_policy_is_kept(page: Browser, address: str) -> None:
    addresses = {url for url in page.fetched() if not url.startswith("data:")}
    assert f"{address}/openapi.json" in addresses
    assert {url for url in addresses if not url.startswith(address)} == set()
    assert page.said() == []


def test_the_page_is_read_on_a_phone_without_scrolling_sideways(address: str) -> None:
    with browser(width=360, height=740, phone=True) as phone:
        phone.go(f"{address}/docs")
        phone.wait(lambda: phone.run(SHOWN))
        phone.picture(PICTURES / "phone.png")
        phone.click(f"{block('calculate_fill')} .opblock-summary-control")
        phone.wait(lambda: phone.run("return document.querySelectorAll('.opblock.is-open .responses-inner').length"))
        width = "const page = document.documentElement; return [page.scrollWidth, page.clientWidth]"
        phone.picture(PICTURES / "phone_open.png")
        scrolled, wide = phone.run(width)
        assert scrolled <= wide
        assert phone.said() == []
