"""The answers as documents over HTTP: what Accept gives, under which headers, with which query."""

from __future__ import annotations

import csv
import io
import json
import subprocess
import sys
import zipfile
from typing import Any

import pytest
from ductrun.http.api import Dispatch, Endpoint
from ductrun.http.calculations import Calculation
from ductrun.http.gate import Gate
from ductrun.http.representations import representations_of
from ductrun.kit.answering import answer_to
from ductrun.kit.forms import Form
from ductrun.kit.operation import Operation
from ductrun.kit.texts import Name
from ductrun.subjects import OPERATIONS
from ductrun.subjects.parts.takeoff import Takeoff
from msgspec import Struct

from tests.asking import EXAMPLES
from tests.drawings.pages import assert_harmless
from tests.drawings.takeoffs import HOSTILE, SMALL, named
from tests.http.wire import JSON_TYPE, Reply, post, reply

WORKBOOK = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"

PAGE = [*JSON_TYPE, ("accept", "text/html")]


class OrderRequest(Form):
    """What is ordered."""

    name: Name


class OrderResult(Struct, frozen=True, gc=False):
    """The list."""

    takeoff: Takeoff


def _listed(request: OrderRequest, _sheet: Any) -> Takeoff:
    return SMALL if request.name == "small" else Takeoff(lines=[named(request.name)])


ORDER: Operation[OrderRequest, Takeoff, OrderResult] = Operation(
    name="order",
    operation_id="calculate_order",
    summary="Order",
    description="A list.",
    request=OrderRequest,
    result=OrderResult,
    assess=_listed,
    tell=lambda takeoff, _telling: OrderResult(takeoff),
    example={"name": "small"},
)
CALCULATION = Calculation(representations_of(ORDER, answer_to(ORDER)), 10_000)


async def _nowhere(*_: Any) -> None:
    raise AssertionError("no such path")


ORDERING = Gate(Dispatch([Endpoint("POST", "/v1/order", CALCULATION)], _nowhere))


def order(accept: str, query: str = "", name: str = "small") -> Reply:
    body = json.dumps({"name": name}).encode()
    headers = [*JSON_TYPE, ("accept", accept)]
    return reply("POST", f"/v1/order{query}", body, headers, application=ORDERING)


@pytest.mark.parametrize("operation", OPERATIONS, ids=lambda operation: operation.name)
def test_every_operation_is_read_as_a_page_that_runs_and_loads_nothing(operation: Operation[Any, Any, Any]) -> None:
    given = post(operation.name, operation.example, headers=PAGE)
    assert given.status == 200
    assert given.headers["content-type"] == "text/html; charset=utf-8"
    assert given.headers["vary"] == "accept"
    assert given.headers["cache-control"] == "no-store"
    page = assert_harmless(given.body, given.headers["content-security-policy"])
    assert page.texts("h1") == [operation.summary]
    assert "Working" in page.texts("h2")


def test_the_same_request_has_the_same_page_byte_for_byte() -> None:
    one, other = (post("encasement", EXAMPLES["encasement"], headers=PAGE) for _ in range(2))
    assert one.body == other.body


def test_a_page_takes_units_and_leaves_the_working_out_if_asked() -> None:
    page = post("encasement", EXAMPLES["encasement"], "?units=metric&working=false", headers=PAGE)
    assert "25.985 m³" in page.body.decode()  # 33.987 yd3 x 0.764555 m3/yd3, derived
    assert "<h2>Working</h2>" not in page.body.decode()


def test_what_a_page_does_not_take_is_refused() -> None:
    for query in ("?page=takeoff", "?request=completed"):
        refused = post("fill", EXAMPLES["fill"], query, headers=PAGE)
        assert refused.status == 422
        assert refused.headers["content-type"] == "application/problem+json"


def test_a_problem_stays_a_problem_whatever_was_asked_for() -> None:
    refused = post("fill", {}, headers=PAGE)
    assert refused.status == 422
    assert refused.headers["content-type"] == "application/problem+json"


def test_a_list_is_not_given_of_what_has_none() -> None:
    for media_type in ("text/csv", WORKBOOK):
        assert post("fill", EXAMPLES["fill"], headers=[*JSON_TYPE, ("accept", media_type)]).status == 406


def test_a_takeoff_is_given_as_list_workbook_and_page() -> None:
    listed = order("text/csv")
    assert listed.headers["content-type"] == "text/csv; charset=utf-8; header=present"
    assert listed.headers["content-disposition"] == 'attachment; filename="takeoff.csv"'
    assert listed.body.startswith(b"line,group,item,")
    assert listed.body.count(b"\r\n") == 4
    book = order(WORKBOOK)
    assert book.headers["content-type"] == WORKBOOK
    assert "xl/worksheets/sheet1.xml" in zipfile.ZipFile(io.BytesIO(book.body)).namelist()
    page = order("text/html", "?page=takeoff")
    assert assert_harmless(page.body, page.headers["content-security-policy"]).texts("h1") == ["Takeoff"]
    assert order("text/html").body == order("text/html", "?page=sheet").body
    assert order("application/json", "?page=takeoff").status == 422


@pytest.mark.parametrize("name", HOSTILE)
def test_a_name_stays_text_in_every_form(name: str) -> None:
    for query in ("?page=sheet", "?page=takeoff"):
        page = order("text/html", query, name)
        read = assert_harmless(page.body, page.headers["content-security-policy"])
        assert name in read.text
        assert name in read.texts("title")[0]
    _, row = csv.reader(io.StringIO(order("text/csv", name=name).body.decode(), newline=""), strict=True)
    assert name in row[5]
    assert all(cell[:1] not in tuple("=+-@") for cell in row)
    assert order(WORKBOOK, name=name).status == 200


def test_no_start_waits_for_what_writes_workbooks() -> None:
    asked = "import sys, ductrun.http.app; sys.exit('xlsxwriter' in sys.modules)"
    assert subprocess.run([sys.executable, "-c", asked], check=False).returncode == 0
