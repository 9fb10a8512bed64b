"""The shape of every error. The canonical form is the one `assert_problem` states, and it holds for the framework's
own errors as for ours: problem+json with type, title, status, detail, request_id, every fault at once with a JSON
Pointer and a code of the vocabulary, no value of the input in it, never a 5xx for what a caller sent.
"""

from __future__ import annotations

import copy
import json
from typing import Any

import pytest
from ductrun.http.app import create_api
from ductrun.http.gate import Gate
from ductrun.http.problems import KINDS
from ductrun.settings import Settings
from ductrun.subjects.parts.choices import ConduitType, TradeSize

from tests.asking import EXAMPLES, quantity
from tests.http.wire import JSON_TYPE, Reply, post, reply, send

ECHO = "zanzibar"
MEMBERS = {
    *("code", "message", "pointer", "parameter", "minimum", "maximum"),
    *("allowed_values", "suggestion", "assumption"),
}


def assert_problem(found: Reply, name: str) -> dict[str, Any]:
    kind = KINDS[name]
    assert found.headers["content-type"] == "application/problem+json"
    assert found.headers["cache-control"] == "no-store"
    problem: dict[str, Any] = found.json
    assert problem["type"] == f"/problems/{name}"
    assert (found.status, problem["status"], problem["title"]) == (kind.status, kind.status, kind.title)
    assert problem["request_id"] == found.headers["x-request-id"]
    assert problem["detail"]
    assert set(problem) <= {"type", "title", "status", "detail", "request_id", "errors"}
    for error in problem.get("errors", []):
        assert set(error) <= MEMBERS
        assert error["code"] in kind.codes or name == "unanswerable"
        assert error["message"].endswith(".")
        assert error.get("suggestion", "") in ["", *error.get("allowed_values", [])]
        assert error.get("pointer", "#").startswith("#")
        assert ("pointer" in error) != ("parameter" in error)
    assert ECHO.encode() not in found.body
    assert b"Traceback" not in found.body
    assert b":null" not in found.body
    page = reply("GET", problem["type"])
    assert page.status == 200
    assert all(f"<code>{code}</code>".encode() in page.body for code in kind.codes)
    assert kind.title.encode() in page.body
    return problem


FILL = json.dumps(EXAMPLES["fill"]).encode()


def changed(text: str, by: str) -> bytes:
    assert text.encode() in FILL
    return FILL.replace(text.encode(), by.encode(), 1)


BODIES = {
    "nothing": (b"", "malformed_json"),
    "blanks": (b"  \n", "malformed_json"),
    "a cut body": (FILL[:-1], "malformed_json"),
    "two values": (FILL + FILL, "malformed_json"),
    "a comment": (b"/* */" + FILL, "malformed_json"),
    "single quotes": (b"{'a': 1}", "malformed_json"),
    "a control character": (b'{"' + ECHO.encode() + b'\x01": 1}', "malformed_json"),
    "a leading zero": (changed('"count": 3', '"count": 03'), "malformed_json"),
    "NaN": (changed('"count": 3', '"count": NaN'), "non_finite_number"),
    "minus infinity": (changed('"count": 3', '"count": -Infinity'), "non_finite_number"),
    "1e400": (changed('"count": 3', '"count": 1e400'), "non_finite_number"),
    "-1e400": (changed('"count": 3', '"count": -1e400'), "non_finite_number"),
    "5000 digits": (changed('"count": 3', f'"count": {"9" * 5000}'), "number_too_long"),
    "a member twice": (changed('"count": 3', '"count": 3, "count": 4'), "duplicate_member"),
    "a top member twice": (b'{"zanzibar": 1, "zanzibar": 1}', "duplicate_member"),
    "a lone surrogate": (changed('"THHN"', '"\\ud800zanzibar"'), "lone_surrogate"),
    "a lone surrogate in a name": (b'{"\\udc00": 1}', "lone_surrogate"),
    "201 arrays": (b"[" * 201 + b"]" * 201, "too_deep"),
    "100 000 arrays": (b"[" * 100_000, "too_deep"),
    "5 000 objects": (b'{"a":' * 5_000 + b"1" + b"}" * 5_000, "too_deep"),
    "invalid UTF-8": (changed('"THHN"', '"THHN"').replace(b"THHN", b"\xff\xfe"), "invalid_utf8"),
    "UTF-16": (FILL.decode().encode("utf-16"), "invalid_utf8"),
    "a byte order mark": (b"\xef\xbb\xbf" + FILL, "invalid_utf8"),
}


@pytest.mark.parametrize("name", BODIES)
def test_a_body_that_is_not_strict_json_has_its_own_problem(name: str) -> None:
    body, problem = BODIES[name]
    assert_problem(post("fill", body), problem)


@pytest.mark.parametrize("body", [b"[]", b"null", b"3", b'"zanzibar"', b"true", b"{}"])
def test_json_that_is_no_request_is_an_invalid_request(body: bytes) -> None:
    assert_problem(post("fill", body), "invalid_request")


def test_150_arrays_are_json_but_no_request() -> None:
    assert_problem(post("fill", b"[" * 150 + b"]" * 150), "invalid_request")


@pytest.mark.parametrize(
    "headers",
    [
        [],
        [("content-type", "text/plain")],
        [("content-type", "application/x-www-form-urlencoded")],
        [("content-type", "application/jsonx")],
        [("content-type", "text/json+json")],
        [("content-type", "application/json; charset=utf-16")],
        [("content-type", "application/json; profile=zanzibar; charset=utf-16")],
        [("content-type", 'application/json; profile="a;b\\"c"; Charset="ISO-8859-1"')],
        [("content-type", "application/json; charset=utf-8; charset=latin1")],
        [("content-type", 'application/json; profile="charset=utf-8; charset=utf-16')],
    ],
)
def test_another_content_type_is_refused_and_told_which(headers: list[tuple[str, str]]) -> None:
    found = post("fill", FILL, headers=headers)
    assert_problem(found, "unsupported_media_type")
    assert found.headers["accept-post"] == "application/json"


@pytest.mark.parametrize(
    "content_type",
    [
        *("application/json", "Application/JSON; charset=UTF-8", "application/geo+json", "application/json;"),
        *(" application/json ", 'application/json; profile="charset=utf-16; charset=latin1"; charset="utf-8"'),
    ],
)
def test_json_by_any_of_its_names_is_taken(content_type: str) -> None:
    assert post("fill", FILL, headers=[("content-type", content_type)]).status == 200


@pytest.mark.parametrize("coding", ["gzip", "zanzibar", "identity, br", "GZIP"])
@pytest.mark.parametrize("path", ["/v1/fill", "/v1/batch", "/v1/batch/stream"])
def test_a_body_that_is_packed_is_refused_and_told_so(coding: str, path: str) -> None:
    media_type = "application/jsonl" if path.endswith("stream") else "application/json"
    found = reply("POST", path, FILL, [("content-type", media_type), ("content-encoding", coding)])
    assert_problem(found, "unsupported_content_coding")
    assert found.headers["accept-encoding"] == "identity"


def test_a_body_that_is_said_to_be_as_it_is_is_taken() -> None:
    assert post("fill", FILL, headers=[*JSON_TYPE, ("content-encoding", "Identity")]).status == 200


def test_a_body_declared_too_large_is_refused_unread() -> None:
    found = reply("POST", "/v1/fill", FILL, [*JSON_TYPE, ("content-length", "1048577")])
    assert "1048576" in assert_problem(found, "body_too_large")["detail"]


def test_a_body_that_grows_too_large_is_refused_though_nothing_was_declared() -> None:
    assert_problem(reply("POST", "/v1/fill", [b" " * 600_000] * 2, JSON_TYPE), "body_too_large")


def test_a_body_in_chunks_is_one_body() -> None:
    assert reply("POST", "/v1/fill", [FILL[:10], FILL[10:50], FILL[50:]], JSON_TYPE).status == 200


def test_a_caller_who_hangs_up_is_not_answered() -> None:
    assert send("POST", "/v1/fill", [FILL[:10]], JSON_TYPE, hang_up=True) is None


@pytest.mark.parametrize("method", ["GET", "HEAD", "PUT", "PATCH", "DELETE", "OPTIONS", "TRACE"])
def test_another_method_is_refused_and_told_which(method: str) -> None:
    found = reply(method, "/v1/fill")
    assert found.headers["allow"] == "POST"
    if method != "HEAD":
        assert_problem(found, "method_not_allowed")


@pytest.mark.parametrize("path", ["/v1/tables/units", "/livez", "/docs", "/"])
def test_what_is_read_is_not_posted(path: str) -> None:
    found = reply("POST", path, FILL, JSON_TYPE)
    assert_problem(found, "method_not_allowed")
    assert "GET" in found.headers["allow"]


@pytest.mark.parametrize(
    "path", ["/v1", "/v1/fill/", f"/{ECHO}", "/v1/tables/zanzibar", "/v1/tables/conduits/emt", "/v2/fill"]
)
def test_a_path_that_leads_nowhere(path: str) -> None:
    assert_problem(reply("GET", path), "not_found")
    assert_problem(reply("POST", path, FILL, JSON_TYPE), "not_found")


def test_a_problem_page_that_is_none() -> None:
    assert_problem(reply("GET", "/problems/zanzibar"), "not_found")


@pytest.mark.parametrize(
    ("query", "parameters"),
    [
        ("units=si", {"units": "not_allowed"}),
        ("units=us&units=metric", {"units": "repeated"}),
        ("unit=metric", {"unit": "unknown_parameter"}),
        ("working=yes&assumptions=", {"working": "not_allowed", "assumptions": "not_allowed"}),
        ("working", {"working": "not_allowed"}),
    ],
)
def test_a_query_that_cannot_be_used_names_the_parameter(query: str, parameters: dict[str, str]) -> None:
    problem = assert_problem(post("fill", FILL, f"?{query}"), "invalid_query")
    assert {error["parameter"]: error["code"] for error in problem["errors"]} == parameters


@pytest.mark.parametrize(
    ("target", "parameters"),
    [
        ("conduits?type=zanzibar", {"type": "not_allowed"}),
        ("conduits?limit=5&offset=5", {"limit": "unknown_parameter", "offset": "unknown_parameter"}),
        ("conduits?type=emt&type=emt", {"type": "repeated"}),
        ("conductors?insulation=thhn&units=imperial", {"insulation": "not_allowed", "units": "not_allowed"}),
        ("conductors?table=9", {"table": "not_allowed"}),
        ("friction?units=metric", {"units": "unknown_parameter"}),
        ("units?units=metric", {"units": "unknown_parameter"}),
        ("sources?source_id=" + "9" * 5000, {"source_id": "not_allowed"}),
    ],
)
def test_a_table_that_cannot_be_picked_from_names_the_parameter(target: str, parameters: dict[str, str]) -> None:
    problem = assert_problem(reply("GET", f"/v1/tables/{target}"), "invalid_query")
    assert {error["parameter"]: error["code"] for error in problem["errors"]} == parameters


@pytest.mark.parametrize("accept", ["application/json", "image/svg+xml", "text/html", "text/csv"])
def test_a_parameter_that_says_what_is_usual_is_taken_with_every_form_of_the_answer(accept: str) -> None:
    asked = "?units=us&working=false&assumptions=state&remedies=false&page=sheet"
    found = post("duct-run", EXAMPLES["duct-run"], asked, [*JSON_TYPE, ("accept", accept)])
    assert found.status == 200
    assert found.headers["content-type"].startswith(accept)


def test_a_parameter_that_an_operation_never_takes_is_refused_even_where_it_says_what_is_usual() -> None:
    [error] = assert_problem(post("fill", EXAMPLES["fill"], "?remedies=false"), "invalid_query")["errors"]
    assert (error["parameter"], error["code"]) == ("remedies", "unknown_parameter")


@pytest.mark.parametrize(
    ("method", "path", "sent", "accept"),
    [
        ("POST", "/v1/batch", "application/json", "text/html"),
        ("POST", "/v1/batch/stream", "application/jsonl", "application/json"),
        ("GET", "/v1/tables/conduits", "application/json", "text/csv"),
    ],
)
def test_an_answer_that_is_not_given_as_asked_is_refused(method: str, path: str, sent: str, accept: str) -> None:
    headers = [("content-type", sent), ("accept", accept)]
    problem = assert_problem(reply(method, path, b"{}" if method == "POST" else b"", headers), "not_acceptable")
    assert problem["detail"].startswith(f"The answer is given as {sent}")


@pytest.mark.parametrize(
    ("asked", "meant"),
    [
        ("/v1/duct_run", "/v1/duct-run"),
        ("/v1/fill/", "/v1/fill"),
        ("/v1/v1/fill", "/v1/fill"),
        ("/v1/tables/conduit", "/v1/tables/conduits"),
    ],
)
def test_a_path_that_is_nearly_one_is_told_which(asked: str, meant: str) -> None:
    problem = assert_problem(reply("POST", asked, b"{}"), "not_found")
    assert problem["detail"] == f"There is nothing at this path. Probably {meant} is meant."


def test_an_unknown_filter_is_answered_with_those_there_are() -> None:
    [error] = assert_problem(reply("GET", "/v1/tables/conduits?conduit=emt"), "invalid_query")["errors"]
    assert "There are: type, trade_size, units." in error["message"]
    [error] = assert_problem(reply("GET", "/v1/tables/conduits?type=EMT"), "invalid_query")["errors"]
    assert "emt" in error["message"]


@pytest.mark.parametrize("path", ["/", "/docs", "/openapi.json", "/problems/not_found", "/livez", "/readyz"])
def test_a_page_that_takes_no_query_says_so(path: str) -> None:
    [error] = assert_problem(reply("GET", f"{path}?units=metric"), "invalid_query")["errors"]
    assert (error["parameter"], error["code"]) == ("units", "unknown_parameter")
    assert error["message"] == "There is no such query parameter. None is taken here."


@pytest.mark.parametrize(
    ("operation", "query", "accept", "sentence"),
    [
        ("duct-run", "page=crew", "application/json", "It is taken only with Accept: text/html. There are: units, "),
        ("fill", "working=true", "image/svg+xml", "It is taken only with Accept: application/json or text/html. "),
        (
            "fill",
            "request=completed",
            "text/html",
            "It is taken only with Accept: application/json. There are: units, ",
        ),
        ("fill", "page=crew", "text/html", "There is no such query parameter. There are: units, "),
    ],
)
def test_a_parameter_of_another_form_of_the_answer_says_which(
    operation: str, query: str, accept: str, sentence: str
) -> None:
    asked = post(operation, EXAMPLES[operation], f"?{query}", [*JSON_TYPE, ("accept", accept)])
    [error] = assert_problem(asked, "invalid_query")["errors"]
    code = "unknown_parameter" if "no such" in sentence else "not_with_this_form"
    assert (error["parameter"], error["code"]) == (query.partition("=")[0], code)
    assert error["message"].startswith(sentence)
    assert "suggestion" not in error


def with_change(operation: str, path: list[Any], value: Any) -> dict[str, Any]:
    request = copy.deepcopy(EXAMPLES[operation])
    node = request
    for step in path[:-1]:
        node = node[step]
    node[path[-1]] = value
    return request


COUNTS = {"minimum": quantity(1, "1"), "maximum": quantity(100_000, "1")}
FRICTION = {"minimum": quantity(0.01, "1"), "maximum": quantity(2, "1")}
SHARE = {"minimum": quantity(0, "percent"), "maximum": quantity(100, "percent")}
NIPPLE = {"minimum": quantity(0, "ft"), "maximum": quantity(1000, "ft")}
HEAT = {"minimum": quantity(-100, "degF"), "maximum": quantity(400, "degF")}
LENGTHS = {"allowed_values": ["mm", "cm", "m", "in", "ft", "yd"]}
KINDS_OF_CONDUIT = {"allowed_values": ["listed", "measured"]}

FIELDS: list[tuple[str, list[Any], Any, str, str, dict[str, Any]]] = [
    ("fill", ["cables", 0, "count"], "3", "#/cables/0/count", "wrong_type", COUNTS),
    ("fill", ["cables", 0, "count"], True, "#/cables/0/count", "wrong_type", COUNTS),
    ("fill", ["cables", 0, "count"], 0, "#/cables/0/count", "out_of_range", COUNTS),
    ("fill", ["cables", 0, "count"], 10**25, "#/cables/0/count", "out_of_range", COUNTS),
    ("fill", ["cables", 0, "count"], 2.5, "#/cables/0/count", "not_an_integer", COUNTS),
    ("fill", ["cables", 0, "count"], 2.0, "#/cables/0/count", "not_an_integer", COUNTS),
    ("fill", ["cables"], [], "#/cables", "too_few", {"minimum": quantity(1, "1"), "maximum": quantity(200, "1")}),
    ("fill", ["cables"], {}, "#/cables", "wrong_type", {}),
    ("fill", ["nipple_length"], 18, "#/nipple_length", "wrong_type", NIPPLE),
    ("fill", ["nipple_length"], None, "#/nipple_length", "wrong_type", NIPPLE),
    ("fill", ["nipple_length"], {"value": 18, "unit": "lb"}, "#/nipple_length/unit", "not_allowed", LENGTHS),
    ("fill", ["nipple_length"], {"value": 18, "unit": 3}, "#/nipple_length/unit", "wrong_type", LENGTHS),
    ("fill", ["nipple_length"], {"value": -1, "unit": "in"}, "#/nipple_length/value", "out_of_range", NIPPLE),
    ("fill", ["nipple_length"], {"value": "1", "unit": "in"}, "#/nipple_length/value", "wrong_type", NIPPLE),
    ("fill", ["nipple_length"], {"value": 1}, "#/nipple_length/unit", "missing", LENGTHS),
    ("fill", ["nipple_length"], {"value": 1, "unit": "in", ECHO: 1}, f"#/nipple_length/{ECHO}", "unknown_member", {"allowed_values": ["unit", "value"]}),
    ("fill", ["single_cable_rounding"], "yes", "#/single_cable_rounding", "wrong_type", {}),
    ("fill", ["conduit", "kind"], ECHO, "#/conduit/kind", "unknown_kind", KINDS_OF_CONDUIT),
    ("fill", ["conduit"], {"type": "emt"}, "#/conduit/kind", "kind_missing", KINDS_OF_CONDUIT),
    ("fill", ["conduit"], ECHO, "#/conduit", "wrong_type", {}),
    ("fill", ["conduit", "type"], ECHO, "#/conduit/type", "not_allowed", {"allowed_values": list(ConduitType)}),
    ("fill", ["conduit", "trade_size"], "7", "#/conduit/trade_size", "not_allowed", {"allowed_values": list(TradeSize)}),
    ("spacers", ["waste_percent"], 1000, "#/waste_percent", "out_of_range", SHARE),
    ("spacers", ["interval", "distance"], quantity(0, "ft"), "#/interval/distance/value", "out_of_range", {"minimum": quantity(0.25, "ft"), "maximum": quantity(1000, "ft")}),
    ("spacers", ["tiers", 1], 0, "#/tiers/1", "out_of_range", {"minimum": quantity(1, "1"), "maximum": quantity(40, "1")}),
    ("encasement", ["waste_percent"], -1, "#/waste_percent", "out_of_range", SHARE),
    ("expansion", ["temperatures", "lowest"], quantity(-500, "degF"), "#/temperatures/lowest/value", "out_of_range", HEAT),
    ("expansion", ["temperatures", "lowest"], quantity(-400, "degF"), "#/temperatures/lowest/value", "out_of_range", HEAT),
    ("pull-tension", ["sections"], [], "#/sections", "too_few", {"minimum": quantity(1, "1"), "maximum": quantity(500, "1")}),
    ("pull-tension", ["sections", 1, "radius"], quantity(0, "ft"), "#/sections/1/radius/value", "out_of_range", {"minimum": quantity(0.5, "in"), "maximum": quantity(120_000, "in")}),
    ("pull-tension", ["friction_coefficient"], 2.5, "#/friction_coefficient", "out_of_range", FRICTION),
]  # fmt: skip


@pytest.mark.parametrize(("operation", "path", "value", "pointer", "code", "taken"), FIELDS)
def test_a_member_that_is_wrong_is_named_with_what_is_taken(
    operation: str, path: list[Any], value: Any, pointer: str, code: str, taken: dict[str, Any]
) -> None:
    found = post(operation, with_change(operation, path, value))
    [error] = json.loads(found.body)["errors"]
    assert (error["pointer"], error["code"]) == (pointer, code)
    assert {name: error[name] for name in ("minimum", "maximum", "allowed_values") if name in error} == taken
    assert "suggestion" not in error
    if pointer[-len(ECHO) :] != ECHO:
        assert_problem(found, "invalid_request")


def test_a_sentence_says_what_to_do_next() -> None:
    changes: dict[str, tuple[dict[str, Any], str]] = {
        "pull-tension": ({"friction_coefficient": "high"}, "Give a number from 0.01 to 2."),
        "fill": ({"nipple_length": 18}, "Give an object of value and unit, from 0 ft to 1,000 ft."),
        "spacers": ({"tiers": []}, "Give an array from 1 to 30 items long."),
        "permitted-use": ({"uses": 1}, "Give an array from 1 to 20 items long."),
        "trench": ({"pavement": 1}, "Give an object of: kind, thickness; it may have: cut_back."),
    }
    for operation, (change, sentence) in changes.items():
        [error] = post(operation, EXAMPLES[operation] | change).json["errors"]
        assert error["message"].endswith(sentence)


def test_an_object_that_is_missing_is_described_by_what_it_must_have() -> None:
    request = {name: value for name, value in EXAMPLES["duct-run"].items() if name != "end"}
    [error] = post("duct-run", request).json["errors"]
    assert (error["pointer"], error["code"]) == ("#/end", "missing")
    assert error["message"].startswith("This member is required. Give an object of: kind; it may have: ")


MEANT: list[tuple[str, list[Any], Any, str]] = [
    ("fill", ["conduit", "trade_size"], 4, "4"),
    ("fill", ["conduit", "type"], "Sch. 40", "pvc_schedule_40"),
    ("fill", ["cables", 0, "cable", "size"], "#12", "12 AWG"),
    ("fill", ["cables", 0, "cable", "insulation"], "THWN2", "THWN-2"),
    ("fill", ["nipple_length"], {"value": 2, "unit": "feet"}, "ft"),
    ("fill", ["conduit", "kind"], "Listed", "listed"),
    ("fill", ["conduits"], 1, "conduit"),
    ("fill", ["conduit", "tradesize"], 1, "trade_size"),
    ("trench", ["lenght"], 1, "length"),
    ("spacers", ["tier"], 1, "tiers"),
    ("fill", ["cables", 0, "cuont"], 1, "count"),
]


@pytest.mark.parametrize(("operation", "path", "value", "meant"), MEANT)
def test_what_is_nearly_known_is_refused_with_what_was_probably_meant(
    operation: str, path: list[Any], value: Any, meant: str
) -> None:
    problem = assert_problem(post(operation, with_change(operation, path, value)), "invalid_request")
    [error] = problem["errors"]
    assert error["suggestion"] == meant
    assert f"Probably {meant} is meant." in error["message"]


def test_a_parameter_that_is_nearly_known_is_refused_with_the_one_meant() -> None:
    problem = assert_problem(post("fill", FILL, "?unit=metric&working=TRUE"), "invalid_query")
    assert [error["suggestion"] for error in problem["errors"]] == ["units", "true"]
    assert problem["errors"][1]["allowed_values"] == ["true", "false"]


def test_of_many_faults_the_first_are_told_what_was_meant() -> None:
    request = EXAMPLES["fill"] | {f"conduit{'_' * number}s": 1 for number in range(1, 40)}
    errors = post("fill", request).json["errors"]
    assert [error.get("suggestion") for error in errors] == ["conduit"] * 20 + [None] * 19


def test_all_faults_come_at_once() -> None:
    request = with_change("pull-tension", ["friction_coefficient"], "high")
    request["sections"][0]["length"] = 150
    request["sections"][1]["angle"] = quantity(90, "ft")
    request["cables"][0]["count"] = 0
    del request["conduit"]
    problem = assert_problem(post("pull-tension", request), "invalid_request")
    assert {error["pointer"] for error in problem["errors"]} == {
        "#/conduit",
        "#/cables/0/count",
        "#/friction_coefficient",
        "#/sections/0/length",
        "#/sections/1/angle/unit",
    }


def test_a_pointer_escapes_and_never_grows_without_bound() -> None:
    problem = post("fill", with_change("fill", ["a/b~c"], 1)).json
    assert problem["errors"][0]["pointer"] == "#/a~1b~0c"
    assert post("fill", with_change("fill", ["conduit", "x" * 5000], 1)).json["errors"][0]["pointer"] == "#/conduit"


def test_a_thousand_faults_are_the_most_that_are_told() -> None:
    request = EXAMPLES["fill"] | {f"field_{number}": 1 for number in range(3000)}
    found = post("fill", request).json
    assert found["detail"].startswith("3000 ")
    assert len(found["errors"]) == 1000


def test_an_unanswerable_question_is_a_problem_with_pointers() -> None:
    problem = assert_problem(
        post("fill", with_change("fill", ["conduit"], {"kind": "listed", "type": "emt", "trade_size": "5"})),
        "unanswerable",
    )
    [error] = problem["errors"]
    assert error["pointer"] == "#/conduit/trade_size"
    assert error["allowed_values"] == ["1/2", "3/4", "1", "1-1/4", "1-1/2", "2", "2-1/2", "3", "3-1/2", "4"]


def test_refused_assumptions_are_a_problem_with_what_would_be_assumed() -> None:
    request = {key: EXAMPLES["spacers"][key] for key in ("length", "tiers")}
    problem = assert_problem(post("spacers", request, "?assumptions=refuse"), "assumptions_refused")
    assumptions = {error["pointer"]: error["assumption"] for error in problem["errors"]}
    assert assumptions["#/interval"]["quantity"] == quantity(5, "ft")
    assert assumptions["#/interval"]["text"] == "5 ft"
    assert assumptions["#/interval"]["source_id"] == "trade-practice"
    assert assumptions["#/top_closure"].keys() == {"text", "citation", "source_id", "standing"}


def test_a_fault_of_our_own_is_an_internal_error_without_a_trace() -> None:
    api = create_api(Settings())

    async def fails() -> None:
        raise ZeroDivisionError(ECHO)

    api.add_api_route("/fails", fails)
    assert_problem(reply("GET", "/fails", application=Gate(api)), "internal_error")


def test_a_service_that_is_not_started_is_not_ready() -> None:
    found = reply("GET", "/readyz")
    assert_problem(found, "not_ready")
    assert found.headers["retry-after"] == "1"
    assert reply("GET", "/livez").json == {"status": "alive"}


def test_a_choice_of_objects_that_is_missing_says_what_each_must_have() -> None:
    problem = post("expansion", {"material": "pvc", "length": {"value": 1, "unit": "ft"}}).json
    [fault] = problem["errors"]
    assert fault["message"] == (
        "This member is required. Give an object whose kind is one of: difference (with difference), "
        "range (with lowest and highest)."
    )


def test_an_object_of_an_unknown_kind_is_told_the_same() -> None:
    problem = post("fill", {"conduit": {"kind": "round"}, "cables": []}).json
    assert "listed (with type and trade_size), measured (with inside_diameter)" in problem["errors"][0]["message"]
