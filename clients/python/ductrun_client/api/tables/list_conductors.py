from http import HTTPStatus
from typing import Any, cast

import httpx

from ...client import AuthenticatedClient, Client
from ...models.conductor_marking import ConductorMarking
from ...models.conductor_size import ConductorSize
from ...models.conductor_table import ConductorTable
from ...models.problem import Problem
from ...models.unit_system import UnitSystem
from ...types import UNSET, Response, Unset


def _get_kwargs(
    *,
    table: str | Unset = UNSET,
    insulation: ConductorMarking | Unset = UNSET,
    size: ConductorSize | Unset = UNSET,
    stranding: str | Unset = UNSET,
    units: UnitSystem | Unset = UNSET,
    if_none_match: str | Unset = UNSET,
) -> dict[str, Any]:
    headers: dict[str, Any] = {}
    if not isinstance(if_none_match, Unset):
        headers["If-None-Match"] = if_none_match

    params: dict[str, Any] = {}

    params["table"] = table

    json_insulation: str | Unset = UNSET
    if not isinstance(insulation, Unset):
        json_insulation = insulation.value

    params["insulation"] = json_insulation

    json_size: str | Unset = UNSET
    if not isinstance(size, Unset):
        json_size = size.value

    params["size"] = json_size

    params["stranding"] = stranding

    json_units: str | Unset = UNSET
    if not isinstance(units, Unset):
        json_units = units.value

    params["units"] = json_units

    params = {k: v for k, v in params.items() if v is not UNSET and v is not None}

    _kwargs: dict[str, Any] = {
        "method": "get",
        "url": "/v1/tables/conductors",
        "params": params,
    }

    _kwargs["headers"] = headers
    return _kwargs


def _parse_response(
    *, client: AuthenticatedClient | Client, response: httpx.Response
) -> Any | ConductorTable | Problem:
    if response.status_code == 200:
        response_200 = ConductorTable.from_dict(response.json())

        return response_200

    if response.status_code == 304:
        response_304 = cast(Any, None)
        return response_304

    if response.status_code == 405:
        response_405 = Problem.from_dict(response.json())

        return response_405

    if response.status_code == 422:
        response_422 = Problem.from_dict(response.json())

        return response_422

    response_default = Problem.from_dict(response.json())

    return response_default


def _build_response(
    *, client: AuthenticatedClient | Client, response: httpx.Response
) -> Response[Any | ConductorTable | Problem]:
    return Response(
        status_code=HTTPStatus(response.status_code),
        content=response.content,
        headers=response.headers,
        parsed=_parse_response(client=client, response=response),
    )


def sync_detailed(
    *,
    client: AuthenticatedClient | Client,
    table: str | Unset = UNSET,
    insulation: ConductorMarking | Unset = UNSET,
    size: ConductorSize | Unset = UNSET,
    stranding: str | Unset = UNSET,
    units: UnitSystem | Unset = UNSET,
    if_none_match: str | Unset = UNSET,
) -> Response[Any | ConductorTable | Problem]:
    """Conductor dimensions

     Diameters and areas of insulated, compact and bare conductors, as printed. Whole, or the rows that
    match every filter exactly.

    Args:
        table (str | Unset):
        insulation (ConductorMarking | Unset): What the rows of the conductor table go by:
            markings of insulation, and bare.
        size (ConductorSize | Unset): Sizes of conductors.
        stranding (str | Unset):
        units (UnitSystem | Unset): Units of the answer: US customary or metric.
        if_none_match (str | Unset):

    Raises:
        errors.UnexpectedStatus: If the server returns an undocumented status code and Client.raise_on_unexpected_status is True.
        httpx.TimeoutException: If the request takes longer than Client.timeout.

    Returns:
        Response[Any | ConductorTable | Problem]
    """

    kwargs = _get_kwargs(
        table=table,
        insulation=insulation,
        size=size,
        stranding=stranding,
        units=units,
        if_none_match=if_none_match,
    )

    response = client.get_httpx_client().request(
        **kwargs,
    )

    return _build_response(client=client, response=response)


def sync(
    *,
    client: AuthenticatedClient | Client,
    table: str | Unset = UNSET,
    insulation: ConductorMarking | Unset = UNSET,
    size: ConductorSize | Unset = UNSET,
    stranding: str | Unset = UNSET,
    units: UnitSystem | Unset = UNSET,
    if_none_match: str | Unset = UNSET,
) -> Any | ConductorTable | Problem | None:
    """Conductor dimensions

     Diameters and areas of insulated, compact and bare conductors, as printed. Whole, or the rows that
    match every filter exactly.

    Args:
        table (str | Unset):
        insulation (ConductorMarking | Unset): What the rows of the conductor table go by:
            markings of insulation, and bare.
        size (ConductorSize | Unset): Sizes of conductors.
        stranding (str | Unset):
        units (UnitSystem | Unset): Units of the answer: US customary or metric.
        if_none_match (str | Unset):

    Raises:
        errors.UnexpectedStatus: If the server returns an undocumented status code and Client.raise_on_unexpected_status is True.
        httpx.TimeoutException: If the request takes longer than Client.timeout.

    Returns:
        Any | ConductorTable | Problem
    """

    return sync_detailed(
        client=client,
        table=table,
        insulation=insulation,
        size=size,
        stranding=stranding,
        units=units,
        if_none_match=if_none_match,
    ).parsed


async def asyncio_detailed(
    *,
    client: AuthenticatedClient | Client,
    table: str | Unset = UNSET,
    insulation: ConductorMarking | Unset = UNSET,
    size: ConductorSize | Unset = UNSET,
    stranding: str | Unset = UNSET,
    units: UnitSystem | Unset = UNSET,
    if_none_match: str | Unset = UNSET,
) -> Response[Any | ConductorTable | Problem]:
    """Conductor dimensions

     Diameters and areas of insulated, compact and bare conductors, as printed. Whole, or the rows that
    match every filter exactly.

    Args:
        table (str | Unset):
        insulation (ConductorMarking | Unset): What the rows of the conductor table go by:
            markings of insulation, and bare.
        size (ConductorSize | Unset): Sizes of conductors.
        stranding (str | Unset):
        units (UnitSystem | Unset): Units of the answer: US customary or metric.
        if_none_match (str | Unset):

    Raises:
        errors.UnexpectedStatus: If the server returns an undocumented status code and Client.raise_on_unexpected_status is True.
        httpx.TimeoutException: If the request takes longer than Client.timeout.

    Returns:
        Response[Any | ConductorTable | Problem]
    """

    kwargs = _get_kwargs(
        table=table,
        insulation=insulation,
        size=size,
        stranding=stranding,
        units=units,
        if_none_match=if_none_match,
    )

    response = await client.get_async_httpx_client().request(**kwargs)

    return _build_response(client=client, response=response)


async def asyncio(
    *,
    client: AuthenticatedClient | Client,
    table: str | Unset = UNSET,
    insulation: ConductorMarking | Unset = UNSET,
    size: ConductorSize | Unset = UNSET,
    stranding: str | Unset = UNSET,
    units: UnitSystem | Unset = UNSET,
    if_none_match: str | Unset = UNSET,
) -> Any | ConductorTable | Problem | None:
    """Conductor dimensions

     Diameters and areas of insulated, compact and bare conductors, as printed. Whole, or the rows that
    match every filter exactly.

    Args:
        table (str | Unset):
        insulation (ConductorMarking | Unset): What the rows of the conductor table go by:
            markings of insulation, and bare.
        size (ConductorSize | Unset): Sizes of conductors.
        stranding (str | Unset):
        units (UnitSystem | Unset): Units of the answer: US customary or metric.
        if_none_match (str | Unset):

    Raises:
        errors.UnexpectedStatus: If the server returns an undocumented status code and Client.raise_on_unexpected_status is True.
        httpx.TimeoutException: If the request takes longer than Client.timeout.

    Returns:
        Any | ConductorTable | Problem
    """

    return (
        await asyncio_detailed(
            client=client,
            table=table,
            insulation=insulation,
            size=size,
            stranding=stranding,
            units=units,
            if_none_match=if_none_match,
        )
    ).parsed
