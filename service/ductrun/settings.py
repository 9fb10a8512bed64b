"""What a deployment may set, read once from the environment; each setting says what it is for and what it may be."""

from __future__ import annotations

import os
import re
from collections.abc import Iterator, Mapping
from dataclasses import Field, dataclass, field, fields
from difflib import get_close_matches
from typing import Any, Final

PREFIX: Final = "DUCTRUN_"
_ORIGIN = re.compile(r"https?://([a-z0-9_-]+(\.[a-z0-9_-]+)*|\[[0-9a-f:.]+\])(:[1-9][0-9]{0,4})?")
_HASH = re.compile(r"[0-9a-f]{64}\Z")
_NOT_SETTINGS = re.compile(r"DUCTRUN_(BENCH|BROWSER|FUZZ|HILLY|SOAK|SERVICE|PORT)(_|\Z)|DUCTRUN_\w+_(PORT|TCP|SERVICE)")


class SettingError(ValueError):
    """A setting that cannot be; the message names it."""


def _count(default: int, least: int, most: int, meaning: str) -> Any:
    return field(default=default, metadata={"least": least, "most": most, "meaning": meaning})


def _one_of(default: str, values: tuple[str, ...], meaning: str) -> Any:
    return field(default=default, metadata={"values": values, "meaning": meaning})


def _switch(*, default: bool, meaning: str) -> Any:
    return field(default=default, metadata={"values": ("true", "false"), "meaning": meaning})


@dataclass(frozen=True, slots=True)
class Settings:
    """Settings of the service; each is an environment variable of the same name with the prefix DUCTRUN_."""

    max_body_bytes: int = _count(
        1_048_576, 1, 1_073_741_824, "bytes of a request, an item of a batch and a line of a stream"
    )
    max_batch_bytes: int = _count(16_777_216, 1, 1_073_741_824, "bytes of a batch")
    max_concurrent: int = _count(
        256, 1, 100_000, "requests at work in one process, beyond which the next is told to come back in a second"
    )
    sender_seconds: int = _count(
        20, 1, 86_400, "for which a request may stop coming, and in which its head must have come"
    )
    reader_seconds: int = _count(30, 1, 86_400, "for which the reader of an answer may stop reading")
    stream_idle_seconds: int = _count(300, 1, 86_400, "for which the sender of a stream may pause")
    keep_alive_seconds: int = _count(
        75, 1, 86_400, "for which a connection without a request is kept; more than the proxy in front keeps it"
    )
    drain_seconds: int = _count(
        5, 0, 3_600, "from being told to stop until no more requests are taken, with /readyz not ready meanwhile"
    )
    stop_seconds: int = _count(20, 1, 3_600, "after that, in which answers that have begun may finish")
    key_hashes: tuple[str, ...] = field(
        default=(),
        metadata={"meaning": "SHA-256 of each key that is taken, in hex, with commas between"},
    )
    cors_origins: tuple[str, ...] = field(
        default=(),
        metadata={
            "meaning": "origins whose pages may ask, such as https://app.example.org, with commas between; * for all"
        },
    )
    open_behind_gateway: bool = _switch(
        default=False, meaning="whether a gateway in front checks who may ask, so that none is asked for a key here"
    )
    metrics: bool = _switch(default=True, meaning="whether GET /metrics answers")
    log: str = _one_of(
        "requests", ("requests", "failures"), "what is logged: a line a request, or only what went wrong"
    )

    @classmethod
    def from_environment(cls, environment: Mapping[str, str] = os.environ) -> Settings:
        """Read the settings; raises SettingError, which names the one that cannot be."""
        given = {}
        for setting in fields(cls):
            text = environment.get(name_of(setting), "").strip()
            if text:
                given[setting.name] = _read(setting, text)
        settings = cls(**given)
        if settings.max_batch_bytes < settings.max_body_bytes:
            raise SettingError(
                f"{PREFIX}MAX_BATCH_BYTES is {settings.max_batch_bytes} and must not be less than "
                f"{PREFIX}MAX_BODY_BYTES, {settings.max_body_bytes}: a batch has room for an item."
            )
        return settings

    def shown(self) -> Iterator[str]:
        """Tell each setting, its default too, and of keys only how many there are."""
        for setting in fields(self):
            value = getattr(self, setting.name)
            if setting.name == "key_hashes":
                value = f"{len(value)} {'key' if len(value) == 1 else 'keys'}"
            elif isinstance(value, tuple):
                value = ",".join(value) or "none"
            yield f"{name_of(setting)}={str(value).lower() if isinstance(value, bool) else value}"


def name_of(setting: Field[Any]) -> str:
    """Give the environment variable of a setting."""
    return PREFIX + setting.name.upper()


def unknown(environment: Mapping[str, str] = os.environ) -> Iterator[str]:
    """Warn of each variable that looks like a setting and is none."""
    known = [name_of(setting) for setting in fields(Settings)]
    for name in sorted(environment):
        if name.startswith(PREFIX) and name not in known and not _NOT_SETTINGS.match(name):
            meant = get_close_matches(name, known, 1)
            yield f"{name} is no setting and is passed over{f'; is {meant[0]} meant?' if meant else '.'}"


def _wrong_origin(origin: str) -> str | None:
    """Say what is wrong with an origin that no browser would send, with which no page could ever be let in."""
    if origin == "*":
        return None
    if "*" in origin:
        return "would let no page in, for an origin is taken as a whole. Name each, or give * alone for all."
    if _ORIGIN.fullmatch(origin.lower()) is None:
        return "is no origin as a browser sends it. Give * or origins such as https://app.example.org, commas between."
    if origin != origin.lower():
        return f"would let no page in, for browsers send small letters. Give {origin.lower()}."
    for scheme, port in (("https:", ":443"), ("http:", ":80")):
        if origin.startswith(scheme) and origin.endswith(port):
            return f"would let no page in, for browsers leave that port out. Give {origin.removesuffix(port)}."
    return None


def _read(setting: Field[Any], text: str) -> Any:
    name, told = name_of(setting), setting.metadata
    if setting.name == "key_hashes":
        hashes = tuple(part.strip().lower() for part in text.split(","))
        if not all(map(_HASH.match, hashes)):
            raise SettingError(
                f"{name} must be SHA-256 in 64 hex digits each, with commas between; `ductrun key` makes one."
            )
        return hashes
    if setting.name == "cors_origins":
        origins = tuple(text.replace(",", " ").split())
        for origin in origins:
            wrong = _wrong_origin(origin)
            if wrong:
                raise SettingError(f"{name}: {origin} {wrong}")
        return origins
    if "values" in told:
        if text not in told["values"]:
            raise SettingError(f"{name} must be {' or '.join(told['values'])}.")
        return text == "true" if setting.type == "bool" else text
    least, most = told["least"], told["most"]
    if not (text.isascii() and text.isdecimal() and len(text) < 12 and least <= int(text) <= most):
        raise SettingError(f"{name} must be a whole number from {least} to {most}.")
    return int(text)
