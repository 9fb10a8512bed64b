from http import HTTPStatus
from typing import Any, cast
from urllib.parse import quote

import httpx

from ...client import AuthenticatedClient, Client
from ...models.conductor_page import ConductorPage
from ...models.insulation import Insulation
from ...models.problem import Problem
from ...types import UNSET, Response, Unset


def _get_kwargs(
    insulation: Insulation,
    *,
    limit: int | Unset = 50,
    offset: int | Unset = 0,
    if_none_match: str | Unset = UNSET,
) -> dict[str, Any]:
    headers: dict[str, Any] = {}
    if not isinstance(if_none_match, Unset):
        headers["If-None-Match"] = if_none_match

    params: dict[str, Any] = {}

    params["limit"] = limit

    params["offset"] = offset

    params = {k: v for k, v in params.items() if v is not UNSET and v is not None}

    _kwargs: dict[str, Any] = {
        "method": "get",
        "url": "/v1/tables/conductors/{insulation}".format(
            insulation=quote(str(insulation), safe=""),
        ),
        "params": params,
    }

    _kwargs["headers"] = headers
    return _kwargs


def _parse_response(
    *, client: AuthenticatedClient | Client, response: httpx.Response
) -> Any | ConductorPage | Problem:
    if response.status_code == 200:
        response_200 = ConductorPage.from_dict(response.json())

        return response_200

    if response.status_code == 304:
        response_304 = cast(Any, None)
        return response_304

    if response.status_code == 404:
        response_404 = Problem.from_dict(response.json())

        return response_404

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
) -> Response[Any | ConductorPage | Problem]:
    return Response(
        status_code=HTTPStatus(response.status_code),
        content=response.content,
        headers=response.headers,
        parsed=_parse_response(client=client, response=response),
    )


def sync_detailed(
    insulation: Insulation,
    *,
    client: AuthenticatedClient | Client,
    limit: int | Unset = 50,
    offset: int | Unset = 0,
    if_none_match: str | Unset = UNSET,
) -> Response[Any | ConductorPage | Problem]:
    """Conductor dimensions of one insulation

     Diameters and areas of insulated, compact and bare conductors, as printed. One insulation, page by
    page.

    Args:
        insulation (Insulation): Insulation as marked on the conductor; an asterisk, as in Table
            5, means without an outer covering.
        limit (int | Unset):  Default: 50.
        offset (int | Unset):  Default: 0.
        if_none_match (str | Unset):

    Raises:
        errors.UnexpectedStatus: If the server returns an undocumented status code and Client.raise_on_unexpected_status is True.
        httpx.TimeoutException: If the request takes longer than Client.timeout.

    Returns:
        Response[Any | ConductorPage | Problem]
    """

    kwargs = _get_kwargs(
        insulation=insulation,
        limit=limit,
        offset=offset,
        if_none_match=if_none_match,
    )

    response = client.get_httpx_client().request(
        **kwargs,
    )

    return _build_response(client=client, response=response)


def sync(
    insulation: Insulation,
    *,
    client: AuthenticatedClient | Client,
    limit: int | Unset = 50,
    offset: int | Unset = 0,
    if_none_match: str | Unset = UNSET,
) -> Any | ConductorPage | Problem | None:
    """Conductor dimensions of one insulation

     Diameters and areas of insulated, compact and bare conductors, as printed. One insulation, page by
    page.

    Args:
        insulation (Insulation): Insulation as marked on the conductor; an asterisk, as in Table
            5, means without an outer covering.
        limit (int | Unset):  Default: 50.
        offset (int | Unset):  Default: 0.
        if_none_match (str | Unset):

    Raises:
        errors.UnexpectedStatus: If the server returns an undocumented status code and Client.raise_on_unexpected_status is True.
        httpx.TimeoutException: If the request takes longer than Client.timeout.

    Returns:
        Any | ConductorPage | Problem
    """

    return sync_detailed(
        insulation=insulation,
        client=client,
        limit=limit,
        offset=offset,
        if_none_match=if_none_match,
    ).parsed


async def asyncio_detailed(
    insulation: Insulation,
    *,
    client: AuthenticatedClient | Client,
    limit: int | Unset = 50,
    offset: int | Unset = 0,
    if_none_match: str | Unset = UNSET,
) -> Response[Any | ConductorPage | Problem]:
    """Conductor dimensions of one insulation

     Diameters and areas of insulated, compact and bare conductors, as printed. One insulation, page by
    page.

    Args:
        insulation (Insulation): Insulation as marked on the conductor; an asterisk, as in Table
            5, means without an outer covering.
        limit (int | Unset):  Default: 50.
        offset (int | Unset):  Default: 0.
        if_none_match (str | Unset):

    Raises:
        errors.UnexpectedStatus: If the server returns an undocumented status code and Client.raise_on_unexpected_status is True.
        httpx.TimeoutException: If the request takes longer than Client.timeout.

    Returns:
        Response[Any | ConductorPage | Problem]
    """

    kwargs = _get_kwargs(
        insulation=insulation,
        limit=limit,
        offset=offset,
        if_none_match=if_none_match,
    )

    response = await client.get_async_httpx_client().request(**kwargs)

    return _build_response(client=client, response=response)


async def asyncio(
    insulation: Insulation,
    *,
    client: AuthenticatedClient | Client,
    limit: int | Unset = 50,
    offset: int | Unset = 0,
    if_none_match: str | Unset = UNSET,
) -> Any | ConductorPage | Problem | None:
    """Conductor dimensions of one insulation

     Diameters and areas of insulated, compact and bare conductors, as printed. One insulation, page by
    page.

    Args:
        insulation (Insulation): Insulation as marked on the conductor; an asterisk, as in Table
            5, means without an outer covering.
        limit (int | Unset):  Default: 50.
        offset (int | Unset):  Default: 0.
        if_none_match (str | Unset):

    Raises:
        errors.UnexpectedStatus: If the server returns an undocumented status code and Client.raise_on_unexpected_status is True.
        httpx.TimeoutException: If the request takes longer than Client.timeout.

    Returns:
        Any | ConductorPage | Problem
    """

    return (
        await asyncio_detailed(
            insulation=insulation,
            client=client,
            limit=limit,
            offset=offset,
            if_none_match=if_none_match,
        )
    ).parsed
