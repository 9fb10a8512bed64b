"""The tables, the front door and the docs: reference data by filter, cached by its content."""

from __future__ import annotations

import json
from typing import Any

import pytest
from ductrun import __version__
from ductrun.subjects import OPERATIONS
from ductrun.subjects.reference_tables import REFERENCE_TABLES
from ductrun.tables import TABLES as LOADED
from ductrun.units import UNIT_CODES
from tools.contract import CONTRACT

from tests.http.wire import reply

TABLES = [f"/v1/tables/{table.name}" for table in REFERENCE_TABLES]
DESCRIBED = '<openapi.json>; rel="service-desc"; type="application/json"'
BROWSER = "text/html,application/xhtml+xml,application/xml;q=0.9,image/avif,image/webp,*/*;q=0.8"


def rows(target: str) -> list[dict[str, Any]]:
    found: list[dict[str, Any]] = reply("GET", f"/v1/tables/{target}").json["rows"]
    return found


@pytest.mark.parametrize("path", [*TABLES, "/v1/tables/conduits?type=emt&units=metric"])
def test_a_table_is_cached_by_its_content(path: str) -> None:
    first = reply("GET", path)
    assert first.status == 200
    assert first.json["rows"]
    assert first.json["tables_version"] == LOADED.hash
    tag = first.headers["etag"]
    assert tag.startswith('"')
    assert "max-age" in first.headers["cache-control"]
    for known in (tag, f'"other", {tag}', f"W/{tag}", "*"):
        unchanged = reply("GET", path, headers=[("if-none-match", known)])
        assert (unchanged.status, unchanged.body, unchanged.headers["etag"]) == (304, b"", tag)
    assert reply("GET", path, headers=[("if-none-match", '"other"')]).status == 200
    head = reply("HEAD", path)
    assert (head.status, head.body, head.headers["etag"]) == (200, b"", tag)
    assert head.headers["content-length"] == first.headers["content-length"]


def test_the_units_table_holds_every_code_with_its_factor() -> None:
    found = {(row["dimension"], row["unit"]): row for row in rows("units")}
    assert found["length", "ft"]["si_factor"] == 0.3048
    assert found["length", "ft"]["ucum"] == "[ft_i]"
    assert found["temperature", "degF"]["si_offset"] == pytest.approx(255.37222)
    shapes = {name.replace("_", "") for name, _ in found}
    assert shapes == {one.__name__.lower() for one in UNIT_CODES}
    assert {unit for _, unit in found} == {code.text for codes in UNIT_CODES.values() for code in codes}
    assert len(found) == sum(len(codes) for codes in UNIT_CODES.values())


@pytest.mark.parametrize(
    ("query", "diameter", "wall"),
    [
        ("", {"value": 4.5, "unit": "in"}, {"value": 0.237, "unit": "in"}),
        ("&units=us", {"value": 4.5, "unit": "in"}, {"value": 0.237, "unit": "in"}),
        ("&units=metric", {"value": 114.3, "unit": "mm"}, {"value": 6.02, "unit": "mm"}),
    ],
)
def test_a_row_is_told_in_the_units_asked_for_as_printed_in_them(
    query: str, diameter: dict[str, Any], wall: dict[str, Any]
) -> None:
    [four] = rows(f"conduits?type=pvc_schedule_40&trade_size=4{query}")
    assert (four["outside_diameter"], four["minimum_wall"]) == (diameter, wall)


def test_coefficients_of_expansion_are_quantities_in_the_units_asked_for() -> None:
    [pvc] = rows("materials?material=pvc")
    assert pvc["coefficient"] == {"value": 3.38e-5, "unit": "1/degF"}
    [pvc] = rows("materials?material=pvc&units=metric")
    assert pvc["coefficient"] == {"value": pytest.approx(6.084e-5), "unit": "1/degC"}


def test_rows_show_where_they_stand() -> None:
    [four] = rows("conduits?type=pvc_schedule_40&trade_size=4")
    assert four["source_id"] == "nfpa70-ch9-t4"
    assert four["standing"] == "memory"
    assert four["wall_standing"] == "published"
    sources = {row["source_id"] for row in rows("sources")}
    for table in ("conduits", "conductors", "materials", "friction"):
        assert {row["source_id"] for row in rows(table)} <= sources
    assert {row["wall_source_id"] for row in rows("conduits") if "wall_source_id" in row} <= sources


PICKED: dict[str, dict[str, str]] = {
    "conduits?type=pvc_schedule_40": {"type": "pvc_schedule_40"},
    "conductors?insulation=THHN": {"insulations": "THHN"},
    "conductors?insulation=THHN&table=5A": {"insulations": "THHN", "table": "5A"},
    "conductors?insulation=RHW*": {"insulations": "RHW*"},
    "conductors?insulation=bare": {"insulations": "bare"},
    "conductors?insulation=bare&stranding=solid&size=8%20AWG": {
        "insulations": "bare",
        "stranding": "solid",
        "size": "8 AWG",
    },
    "friction?jacket=PE&conduit=rigid%20PVC": {"jacket": "PE", "conduit": "rigid PVC"},
    "units?dimension=length": {"dimension": "length"},
    "sources?source_id=nfpa70-ch9-t4": {"source_id": "nfpa70-ch9-t4"},
}


@pytest.mark.parametrize(("target", "columns"), PICKED.items(), ids=list(PICKED))
def test_a_filter_gives_the_rows_that_match_every_column(target: str, columns: dict[str, str]) -> None:
    def matches(row: dict[str, Any]) -> bool:
        cells = {name: row.get(name, []) for name in columns}
        return all(
            columns[name] in cell if isinstance(cell, list) else columns[name] == cell for name, cell in cells.items()
        )

    picked = rows(target)
    assert picked == [row for row in rows(target.partition("?")[0]) if matches(row)]
    assert picked


def test_a_filter_that_matches_nothing_gives_no_rows() -> None:
    assert rows("conductors?insulation=THHN&size=18%20AWG") == []


@pytest.mark.parametrize("table", REFERENCE_TABLES, ids=lambda table: table.name)
def test_every_row_is_found_by_the_names_it_carries(table: Any) -> None:
    whole = rows(table.name)
    for one in table.filters:
        column = one.column or one.name
        for row in whole[:: max(1, len(whole) // 5)]:
            carried = row.get(column, [])
            for value in carried if isinstance(carried, list) else [carried]:
                escaped = value.replace("/", "%2F").replace(" ", "%20").replace("(", "%28")
                assert row in rows(f"{table.name}?{one.name}={escaped}")


@pytest.mark.parametrize("path", TABLES)
def test_a_whole_table_is_a_small_answer(path: str) -> None:
    assert len(reply("GET", path).body) < 65_536


def test_what_is_picked_has_its_own_entity_tag() -> None:
    targets = ("", "?type=emt", "?type=rmc", "?type=emt&units=metric")
    tags = {reply("GET", f"/v1/tables/conduits{target}").headers["etag"] for target in targets}
    assert len(tags) == len(targets)


@pytest.mark.parametrize(
    ("accept", "place"),
    [
        (BROWSER, "/docs"),
        ("text/html", "/docs"),
        ("text/*;q=0.5, application/json;q=0.4", "/docs"),
        ("application/json, text/html;q=0.9", "/openapi.json"),
        ("text/html;q=0, */*", "/openapi.json"),
        ("text/html;q=nan, application/json", "/openapi.json"),
        ("*/*", "/openapi.json"),
        ("", "/openapi.json"),
    ],
)
def test_the_front_door_sends_a_browser_to_the_docs_and_a_program_to_the_contract(accept: str, place: str) -> None:
    for method in ("GET", "HEAD"):
        found = reply(method, "/", headers=[("accept", accept)] if accept else [])
        assert (found.status, found.headers["location"], found.headers["vary"]) == (307, place, "Accept")
        assert found.body == b""
        assert found.headers["link"] == DESCRIBED


def test_the_docs_page_needs_nothing_from_elsewhere() -> None:
    page = reply("GET", "/docs")
    assert page.status == 200
    assert page.headers["link"] == DESCRIBED
    assert "default-src 'none'" in page.headers["content-security-policy"]
    assert b"http" not in page.body.replace(b"http-equiv", b"")
    for asset in ("swagger-ui/swagger-ui.css", "swagger-ui/swagger-ui-bundle.js", "docs.js", "page.css", "icon.svg"):
        assert f"docs/assets/{asset}".encode() in page.body or asset == "page.css"
        assert reply("GET", f"/docs/assets/{asset}").status == 200
    assert reply("HEAD", "/docs").body == b""


def test_the_contract_is_served_as_it_is_written() -> None:
    first = reply("GET", "/openapi.json")
    kept = CONTRACT.read_bytes()
    assert first.json["info"]["version"] == __version__
    assert first.json == json.loads(kept)
    assert b"\n" not in first.body
    assert len(first.body) < 0.6 * len(kept)  # a blank costs as much as a letter on the way
    again = reply("GET", "/openapi.json", headers=[("if-none-match", first.headers["etag"])])
    assert (again.status, again.body) == (304, b"")
    assert reply("HEAD", "/openapi.json").headers["etag"] == first.headers["etag"]


def test_the_operations_stand_in_the_order_of_a_job() -> None:
    document = reply("GET", "/openapi.json").json
    calculations = [f"/v1/{operation.name}" for operation in OPERATIONS]
    assert list(document["paths"]) == [*calculations, "/v1/batch", "/v1/batch/stream", *TABLES, "/livez", "/readyz"]
    tags = [tag["name"] for tag in document["tags"]]
    in_order = [item["tags"] for path in document["paths"].values() for item in path.values()]
    assert tags == list(dict.fromkeys(tag for [tag] in in_order))
    assert tags[:2] == ["duct_run", "conduit"]
    assert tags[-3:] == ["batches", "tables", "health"]
    assert all(len(tag["description"]) > 15 for tag in document["tags"])
    assert calculations[:3] == ["/v1/duct-run", "/v1/duct-run/compare", "/v1/permitted-use"]
    assert calculations.index("/v1/trench") < calculations.index("/v1/joints") < calculations.index("/v1/pull-tension")
