from http import HTTPStatus
from typing import Any, cast

import httpx

from ...client import AuthenticatedClient, Client
from ...models.friction_table import FrictionTable
from ...models.problem import Problem
from ...types import UNSET, Response, Unset


def _get_kwargs(
    *,
    jacket: str | Unset = UNSET,
    conduit: str | Unset = UNSET,
    lubrication: str | Unset = UNSET,
    if_none_match: str | Unset = UNSET,
) -> dict[str, Any]:
    headers: dict[str, Any] = {}
    if not isinstance(if_none_match, Unset):
        headers["If-None-Match"] = if_none_match

    params: dict[str, Any] = {}

    params["jacket"] = jacket

    params["conduit"] = conduit

    params["lubrication"] = lubrication

    params = {k: v for k, v in params.items() if v is not UNSET and v is not None}

    _kwargs: dict[str, Any] = {
        "method": "get",
        "url": "/v1/tables/friction",
        "params": params,
    }

    _kwargs["headers"] = headers
    return _kwargs


def _parse_response(
    *, client: AuthenticatedClient | Client, response: httpx.Response
) -> Any | FrictionTable | Problem:
    if response.status_code == 200:
        response_200 = FrictionTable.from_dict(response.json())

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
) -> Response[Any | FrictionTable | Problem]:
    return Response(
        status_code=HTTPStatus(response.status_code),
        content=response.content,
        headers=response.headers,
        parsed=_parse_response(client=client, response=response),
    )


def sync_detailed(
    *,
    client: AuthenticatedClient | Client,
    jacket: str | Unset = UNSET,
    conduit: str | Unset = UNSET,
    lubrication: str | Unset = UNSET,
    if_none_match: str | Unset = UNSET,
) -> Response[Any | FrictionTable | Problem]:
    """Friction coefficients

     Published coefficients of friction of cable against conduit. Whole, or the rows that match every
    filter exactly.

    Args:
        jacket (str | Unset):
        conduit (str | Unset):
        lubrication (str | Unset):
        if_none_match (str | Unset):

    Raises:
        errors.UnexpectedStatus: If the server returns an undocumented status code and Client.raise_on_unexpected_status is True.
        httpx.TimeoutException: If the request takes longer than Client.timeout.

    Returns:
        Response[Any | FrictionTable | Problem]
    """

    kwargs = _get_kwargs(
        jacket=jacket,
        conduit=conduit,
        lubrication=lubrication,
        if_none_match=if_none_match,
    )

    response = client.get_httpx_client().request(
        **kwargs,
    )

    return _build_response(client=client, response=response)


def sync(
    *,
    client: AuthenticatedClient | Client,
    jacket: str | Unset = UNSET,
    conduit: str | Unset = UNSET,
    lubrication: str | Unset = UNSET,
    if_none_match: str | Unset = UNSET,
) -> Any | FrictionTable | Problem | None:
    """Friction coefficients

     Published coefficients of friction of cable against conduit. Whole, or the rows that match every
    filter exactly.

    Args:
        jacket (str | Unset):
        conduit (str | Unset):
        lubrication (str | Unset):
        if_none_match (str | Unset):

    Raises:
        errors.UnexpectedStatus: If the server returns an undocumented status code and Client.raise_on_unexpected_status is True.
        httpx.TimeoutException: If the request takes longer than Client.timeout.

    Returns:
        Any | FrictionTable | Problem
    """

    return sync_detailed(
        client=client,
        jacket=jacket,
        conduit=conduit,
        lubrication=lubrication,
        if_none_match=if_none_match,
    ).parsed


async def asyncio_detailed(
    *,
    client: AuthenticatedClient | Client,
    jacket: str | Unset = UNSET,
    conduit: str | Unset = UNSET,
    lubrication: str | Unset = UNSET,
    if_none_match: str | Unset = UNSET,
) -> Response[Any | FrictionTable | Problem]:
    """Friction coefficients

     Published coefficients of friction of cable against conduit. Whole, or the rows that match every
    filter exactly.

    Args:
        jacket (str | Unset):
        conduit (str | Unset):
        lubrication (str | Unset):
        if_none_match (str | Unset):

    Raises:
        errors.UnexpectedStatus: If the server returns an undocumented status code and Client.raise_on_unexpected_status is True.
        httpx.TimeoutException: If the request takes longer than Client.timeout.

    Returns:
        Response[Any | FrictionTable | Problem]
    """

    kwargs = _get_kwargs(
        jacket=jacket,
        conduit=conduit,
        lubrication=lubrication,
        if_none_match=if_none_match,
    )

    response = await client.get_async_httpx_client().request(**kwargs)

    return _build_response(client=client, response=response)


async def asyncio(
    *,
    client: AuthenticatedClient | Client,
    jacket: str | Unset = UNSET,
    conduit: str | Unset = UNSET,
    lubrication: str | Unset = UNSET,
    if_none_match: str | Unset = UNSET,
) -> Any | FrictionTable | Problem | None:
    """Friction coefficients

     Published coefficients of friction of cable against conduit. Whole, or the rows that match every
    filter exactly.

    Args:
        jacket (str | Unset):
        conduit (str | Unset):
        lubrication (str | Unset):
        if_none_match (str | Unset):

    Raises:
        errors.UnexpectedStatus: If the server returns an undocumented status code and Client.raise_on_unexpected_status is True.
        httpx.TimeoutException: If the request takes longer than Client.timeout.

    Returns:
        Any | FrictionTable | Problem
    """

    return (
        await asyncio_detailed(
            client=client,
            jacket=jacket,
            conduit=conduit,
            lubrication=lubrication,
            if_none_match=if_none_match,
        )
    ).parsed
