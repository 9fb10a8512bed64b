"""The items of a batch and the lines of a stream, each read as what its tags say."""

from __future__ import annotations

from typing import Any, TypeAlias

import msgspec

from . import models


class UnknownAnswer(msgspec.Struct, kw_only=True):
    """An answer of an operation that this version of the client does not know, with what came as plain values."""

    operation: str
    status: int
    answer: dict[str, Any]
    id: str
    line: int | None = None


class _Tags(msgspec.Struct):
    type: str = ""
    operation: str = ""


BatchItem: TypeAlias = models.ItemAnswer | models.ItemProblem | UnknownAnswer
StreamItem: TypeAlias = models.StreamAnswer | models.StreamProblem | UnknownAnswer

_tags = msgspec.json.Decoder(_Tags).decode
_item = msgspec.json.Decoder(models.ItemAnswer).decode
_item_problem = msgspec.json.Decoder(models.ItemProblem).decode
_answer = msgspec.json.Decoder(models.StreamAnswer).decode
_problem = msgspec.json.Decoder(models.StreamProblem).decode
_unknown = msgspec.json.Decoder(UnknownAnswer).decode
_summary = msgspec.json.Decoder(models.StreamSummary).decode
_stopped = msgspec.json.Decoder(models.StreamStopped).decode


def item_of(text: bytes) -> BatchItem:
    """Read an item of the answer to a batch."""
    tags = _tags(text)
    if tags.type == "problem":
        return _item_problem(text)
    return _item(text) if tags.operation in models.ITEM_ANSWER_BY_OPERATION else _unknown(text)


def line_of(text: bytes) -> StreamItem | models.StreamSummary | models.StreamStopped | None:
    """Read a line of a stream; None of one that is about no question."""
    tags = _tags(text)
    if tags.type == "summary":
        return _summary(text)
    if tags.type == "stopped":
        return _stopped(text)
    if tags.type == "problem":
        return _problem(text)
    if tags.type != "answer":
        return None
    return _answer(text) if tags.operation in models.STREAM_ANSWER_BY_OPERATION else _unknown(text)
