from http import HTTPStatus
from typing import Any

import httpx

from ...client import AuthenticatedClient, Client
from ...models.assumption_policy import AssumptionPolicy
from ...models.batch_answer import BatchAnswer
from ...models.batch_request import BatchRequest
from ...models.problem import Problem
from ...models.request_back import RequestBack
from ...models.unit_system import UnitSystem
from ...types import UNSET, Response, Unset


def _get_kwargs(
    *,
    body: BatchRequest,
    units: UnitSystem | Unset = UNSET,
    working: bool | Unset = False,
    assumptions: AssumptionPolicy | Unset = UNSET,
    request: RequestBack | Unset = UNSET,
) -> dict[str, Any]:
    headers: dict[str, Any] = {}

    params: dict[str, Any] = {}

    json_units: str | Unset = UNSET
    if not isinstance(units, Unset):
        json_units = units.value

    params["units"] = json_units

    params["working"] = working

    json_assumptions: str | Unset = UNSET
    if not isinstance(assumptions, Unset):
        json_assumptions = assumptions.value

    params["assumptions"] = json_assumptions

    json_request: str | Unset = UNSET
    if not isinstance(request, Unset):
        json_request = request.value

    params["request"] = json_request

    params = {k: v for k, v in params.items() if v is not UNSET and v is not None}

    _kwargs: dict[str, Any] = {
        "method": "post",
        "url": "/v1/batch",
        "params": params,
    }

    _kwargs["json"] = body.to_dict()

    headers["Content-Type"] = "application/json"

    _kwargs["headers"] = headers
    return _kwargs


def _parse_response(
    *, client: AuthenticatedClient | Client, response: httpx.Response
) -> BatchAnswer | Problem:
    if response.status_code == 200:
        response_200 = BatchAnswer.from_dict(response.json())

        return response_200

    if response.status_code == 400:
        response_400 = Problem.from_dict(response.json())

        return response_400

    if response.status_code == 405:
        response_405 = Problem.from_dict(response.json())

        return response_405

    if response.status_code == 413:
        response_413 = Problem.from_dict(response.json())

        return response_413

    if response.status_code == 415:
        response_415 = Problem.from_dict(response.json())

        return response_415

    if response.status_code == 422:
        response_422 = Problem.from_dict(response.json())

        return response_422

    response_default = Problem.from_dict(response.json())

    return response_default


def _build_response(
    *, client: AuthenticatedClient | Client, response: httpx.Response
) -> Response[BatchAnswer | Problem]:
    return Response(
        status_code=HTTPStatus(response.status_code),
        content=response.content,
        headers=response.headers,
        parsed=_parse_response(client=client, response=response),
    )


def sync_detailed(
    *,
    client: AuthenticatedClient | Client,
    body: BatchRequest,
    units: UnitSystem | Unset = UNSET,
    working: bool | Unset = False,
    assumptions: AssumptionPolicy | Unset = UNSET,
    request: RequestBack | Unset = UNSET,
) -> Response[BatchAnswer | Problem]:
    """Many calculations at once

     Answers up to 1,000 questions of any calculations in order, each with the status it would have by
    itself: a question without an answer is that item's problem and no other's. A large answer comes in
    chunks.

    Args:
        units (UnitSystem | Unset): Units of the answer: US customary or metric.
        working (bool | Unset):  Default: False.
        assumptions (AssumptionPolicy | Unset): What to do where a field was left out: state what
            was assumed, or refuse to assume.
        request (RequestBack | Unset): How the request comes back with the answer, if asked for:
            with every default filled in.
        body (BatchRequest): Questions to answer in one go.

    Raises:
        errors.UnexpectedStatus: If the server returns an undocumented status code and Client.raise_on_unexpected_status is True.
        httpx.TimeoutException: If the request takes longer than Client.timeout.

    Returns:
        Response[BatchAnswer | Problem]
    """

    kwargs = _get_kwargs(
        body=body,
        units=units,
        working=working,
        assumptions=assumptions,
        request=request,
    )

    response = client.get_httpx_client().request(
        **kwargs,
    )

    return _build_response(client=client, response=response)


def sync(
    *,
    client: AuthenticatedClient | Client,
    body: BatchRequest,
    units: UnitSystem | Unset = UNSET,
    working: bool | Unset = False,
    assumptions: AssumptionPolicy | Unset = UNSET,
    request: RequestBack | Unset = UNSET,
) -> BatchAnswer | Problem | None:
    """Many calculations at once

     Answers up to 1,000 questions of any calculations in order, each with the status it would have by
    itself: a question without an answer is that item's problem and no other's. A large answer comes in
    chunks.

    Args:
        units (UnitSystem | Unset): Units of the answer: US customary or metric.
        working (bool | Unset):  Default: False.
        assumptions (AssumptionPolicy | Unset): What to do where a field was left out: state what
            was assumed, or refuse to assume.
        request (RequestBack | Unset): How the request comes back with the answer, if asked for:
            with every default filled in.
        body (BatchRequest): Questions to answer in one go.

    Raises:
        errors.UnexpectedStatus: If the server returns an undocumented status code and Client.raise_on_unexpected_status is True.
        httpx.TimeoutException: If the request takes longer than Client.timeout.

    Returns:
        BatchAnswer | Problem
    """

    return sync_detailed(
        client=client,
        body=body,
        units=units,
        working=working,
        assumptions=assumptions,
        request=request,
    ).parsed


async def asyncio_detailed(
    *,
    client: AuthenticatedClient | Client,
    body: BatchRequest,
    units: UnitSystem | Unset = UNSET,
    working: bool | Unset = False,
    assumptions: AssumptionPolicy | Unset = UNSET,
    request: RequestBack | Unset = UNSET,
) -> Response[BatchAnswer | Problem]:
    """Many calculations at once

     Answers up to 1,000 questions of any calculations in order, each with the status it would have by
    itself: a question without an answer is that item's problem and no other's. A large answer comes in
    chunks.

    Args:
        units (UnitSystem | Unset): Units of the answer: US customary or metric.
        working (bool | Unset):  Default: False.
        assumptions (AssumptionPolicy | Unset): What to do where a field was left out: state what
            was assumed, or refuse to assume.
        request (RequestBack | Unset): How the request comes back with the answer, if asked for:
            with every default filled in.
        body (BatchRequest): Questions to answer in one go.

    Raises:
        errors.UnexpectedStatus: If the server returns an undocumented status code and Client.raise_on_unexpected_status is True.
        httpx.TimeoutException: If the request takes longer than Client.timeout.

    Returns:
        Response[BatchAnswer | Problem]
    """

    kwargs = _get_kwargs(
        body=body,
        units=units,
        working=working,
        assumptions=assumptions,
        request=request,
    )

    response = await client.get_async_httpx_client().request(**kwargs)

    return _build_response(client=client, response=response)


async def asyncio(
    *,
    client: AuthenticatedClient | Client,
    body: BatchRequest,
    units: UnitSystem | Unset = UNSET,
    working: bool | Unset = False,
    assumptions: AssumptionPolicy | Unset = UNSET,
    request: RequestBack | Unset = UNSET,
) -> BatchAnswer | Problem | None:
    """Many calculations at once

     Answers up to 1,000 questions of any calculations in order, each with the status it would have by
    itself: a question without an answer is that item's problem and no other's. A large answer comes in
    chunks.

    Args:
        units (UnitSystem | Unset): Units of the answer: US customary or metric.
        working (bool | Unset):  Default: False.
        assumptions (AssumptionPolicy | Unset): What to do where a field was left out: state what
            was assumed, or refuse to assume.
        request (RequestBack | Unset): How the request comes back with the answer, if asked for:
            with every default filled in.
        body (BatchRequest): Questions to answer in one go.

    Raises:
        errors.UnexpectedStatus: If the server returns an undocumented status code and Client.raise_on_unexpected_status is True.
        httpx.TimeoutException: If the request takes longer than Client.timeout.

    Returns:
        BatchAnswer | Problem
    """

    return (
        await asyncio_detailed(
            client=client,
            body=body,
            units=units,
            working=working,
            assumptions=assumptions,
            request=request,
        )
    ).parsed
