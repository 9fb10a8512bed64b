from http import HTTPStatus
from typing import Any, cast
from urllib.parse import quote

import httpx

from ...client import AuthenticatedClient, Client
from ...models.conduit_page import ConduitPage
from ...models.conduit_type import ConduitType
from ...models.problem import Problem
from ...types import UNSET, Response, Unset


def _get_kwargs(
    type_: ConduitType,
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
        "url": "/v1/tables/conduits/{type_}".format(
            type_=quote(str(type_), safe=""),
        ),
        "params": params,
    }

    _kwargs["headers"] = headers
    return _kwargs


def _parse_response(
    *, client: AuthenticatedClient | Client, response: httpx.Response
) -> Any | ConduitPage | Problem:
    if response.status_code == 200:
        response_200 = ConduitPage.from_dict(response.json())

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
) -> Response[Any | ConduitPage | Problem]:
    return Response(
        status_code=HTTPStatus(response.status_code),
        content=response.content,
        headers=response.headers,
        parsed=_parse_response(client=client, response=response),
    )


def sync_detailed(
    type_: ConduitType,
    *,
    client: AuthenticatedClient | Client,
    limit: int | Unset = 50,
    offset: int | Unset = 0,
    if_none_match: str | Unset = UNSET,
) -> Response[Any | ConduitPage | Problem]:
    """Conduit and duct dimensions of one type

     Inside and outside diameters, areas and walls of every type and trade size, as printed. One type,
    page by page.

    Args:
        type_ (ConduitType): Kinds of conduit and duct with a sourced table row; RTRC has rules,
            but no dimensions on file.
        limit (int | Unset):  Default: 50.
        offset (int | Unset):  Default: 0.
        if_none_match (str | Unset):

    Raises:
        errors.UnexpectedStatus: If the server returns an undocumented status code and Client.raise_on_unexpected_status is True.
        httpx.TimeoutException: If the request takes longer than Client.timeout.

    Returns:
        Response[Any | ConduitPage | Problem]
    """

    kwargs = _get_kwargs(
        type_=type_,
        limit=limit,
        offset=offset,
        if_none_match=if_none_match,
    )

    response = client.get_httpx_client().request(
        **kwargs,
    )

    return _build_response(client=client, response=response)


def sync(
    type_: ConduitType,
    *,
    client: AuthenticatedClient | Client,
    limit: int | Unset = 50,
    offset: int | Unset = 0,
    if_none_match: str | Unset = UNSET,
) -> Any | ConduitPage | Problem | None:
    """Conduit and duct dimensions of one type

     Inside and outside diameters, areas and walls of every type and trade size, as printed. One type,
    page by page.

    Args:
        type_ (ConduitType): Kinds of conduit and duct with a sourced table row; RTRC has rules,
            but no dimensions on file.
        limit (int | Unset):  Default: 50.
        offset (int | Unset):  Default: 0.
        if_none_match (str | Unset):

    Raises:
        errors.UnexpectedStatus: If the server returns an undocumented status code and Client.raise_on_unexpected_status is True.
        httpx.TimeoutException: If the request takes longer than Client.timeout.

    Returns:
        Any | ConduitPage | Problem
    """

    return sync_detailed(
        type_=type_,
        client=client,
        limit=limit,
        offset=offset,
        if_none_match=if_none_match,
    ).parsed


async def asyncio_detailed(
    type_: ConduitType,
    *,
    client: AuthenticatedClient | Client,
    limit: int | Unset = 50,
    offset: int | Unset = 0,
    if_none_match: str | Unset = UNSET,
) -> Response[Any | ConduitPage | Problem]:
    """Conduit and duct dimensions of one type

     Inside and outside diameters, areas and walls of every type and trade size, as printed. One type,
    page by page.

    Args:
        type_ (ConduitType): Kinds of conduit and duct with a sourced table row; RTRC has rules,
            but no dimensions on file.
        limit (int | Unset):  Default: 50.
        offset (int | Unset):  Default: 0.
        if_none_match (str | Unset):

    Raises:
        errors.UnexpectedStatus: If the server returns an undocumented status code and Client.raise_on_unexpected_status is True.
        httpx.TimeoutException: If the request takes longer than Client.timeout.

    Returns:
        Response[Any | ConduitPage | Problem]
    """

    kwargs = _get_kwargs(
        type_=type_,
        limit=limit,
        offset=offset,
        if_none_match=if_none_match,
    )

    response = await client.get_async_httpx_client().request(**kwargs)

    return _build_response(client=client, response=response)


async def asyncio(
    type_: ConduitType,
    *,
    client: AuthenticatedClient | Client,
    limit: int | Unset = 50,
    offset: int | Unset = 0,
    if_none_match: str | Unset = UNSET,
) -> Any | ConduitPage | Problem | None:
    """Conduit and duct dimensions of one type

     Inside and outside diameters, areas and walls of every type and trade size, as printed. One type,
    page by page.

    Args:
        type_ (ConduitType): Kinds of conduit and duct with a sourced table row; RTRC has rules,
            but no dimensions on file.
        limit (int | Unset):  Default: 50.
        offset (int | Unset):  Default: 0.
        if_none_match (str | Unset):

    Raises:
        errors.UnexpectedStatus: If the server returns an undocumented status code and Client.raise_on_unexpected_status is True.
        httpx.TimeoutException: If the request takes longer than Client.timeout.

    Returns:
        Any | ConduitPage | Problem
    """

    return (
        await asyncio_detailed(
            type_=type_,
            client=client,
            limit=limit,
            offset=offset,
            if_none_match=if_none_match,
        )
    ).parsed
