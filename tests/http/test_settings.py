"""What a deployment sets: read strictly, told without secrets, and none that is wrong starts."""

from __future__ import annotations

import subprocess
import sys
import tempfile
from dataclasses import fields
from pathlib import Path
from typing import Any

import pytest
from ductrun.serving import RefusedError, check_open, shared_figures
from ductrun.settings import SettingError, Settings, name_of, unknown
from tools.live import REPOSITORY

HASH = "9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08"  # of `test`, as sha256sum prints it


def test_what_is_not_set_has_its_default() -> None:
    assert Settings.from_environment({}) == Settings()


def test_each_setting_is_read_from_its_variable() -> None:
    given = {"DUCTRUN_MAX_CONCURRENT": "7", "DUCTRUN_METRICS": "false", "DUCTRUN_LOG": "failures"}
    read = Settings.from_environment(given | {"DUCTRUN_KEY_HASHES": f"{HASH}, {HASH.upper()}"})
    assert read == Settings(max_concurrent=7, metrics=False, log="failures", key_hashes=(HASH, HASH))


@pytest.mark.parametrize(
    ("name", "text", "told"),
    [
        ("DUCTRUN_MAX_BODY_BYTES", "0", "a whole number from 1 to 1073741824"),
        ("DUCTRUN_MAX_BODY_BYTES", "1e6", "a whole number from 1 to 1073741824"),
        ("DUCTRUN_SENDER_SECONDS", "-1", "a whole number from 1 to 86400"),
        ("DUCTRUN_STOP_SECONDS", "9" * 5_000, "a whole number from 1 to 3600"),
        ("DUCTRUN_METRICS", "yes", "true or false"),
        ("DUCTRUN_LOG", "all", "requests or failures"),
        ("DUCTRUN_KEY_HASHES", "sesame", "SHA-256 in 64 hex digits"),
    ],
)
def test_a_wrong_one_is_named_and_its_value_is_not_repeated(name: str, text: str, told: str) -> None:
    with pytest.raises(SettingError) as raised:
        Settings.from_environment({name: text})
    assert str(raised.value).startswith(f"{name} must be {told}")
    assert "sesame" not in str(raised.value)


def test_a_batch_that_has_no_room_for_an_item_is_refused() -> None:
    with pytest.raises(SettingError) as raised:
        Settings.from_environment({"DUCTRUN_MAX_BATCH_BYTES": "999", "DUCTRUN_MAX_BODY_BYTES": "1000"})
    assert str(raised.value) == (
        "DUCTRUN_MAX_BATCH_BYTES is 999 and must not be less than DUCTRUN_MAX_BODY_BYTES, 1000: "
        "a batch has room for an item."
    )
    equal = Settings.from_environment({"DUCTRUN_MAX_BATCH_BYTES": "1000", "DUCTRUN_MAX_BODY_BYTES": "1000"})
    assert equal.max_batch_bytes == equal.max_body_bytes
    assert Settings.from_environment({"DUCTRUN_MAX_BATCH_BYTES": "  "}) == Settings()


def test_a_wrong_one_stops_the_start_with_one_sentence() -> None:
    done = subprocess.run(
        [sys.executable, "-m", "ductrun", "serve", "--port", "8123"],
        cwd=REPOSITORY,
        env={"DUCTRUN_DRAIN_SECONDS": "soon", "PYTHONPATH": str(REPOSITORY / "service")},
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 1
    assert done.stderr == "ductrun: DUCTRUN_DRAIN_SECONDS must be a whole number from 0 to 3600.\n"


def test_settings_are_told_without_secrets() -> None:
    told = " ".join(Settings(key_hashes=(HASH,), metrics=False).shown())
    assert "DUCTRUN_KEY_HASHES=1 key" in told
    assert "DUCTRUN_METRICS=false" in told
    assert "DUCTRUN_SENDER_SECONDS=20" in told
    assert HASH[:8] not in told
    assert told.count("DUCTRUN_") == len(fields(Settings))


def test_what_looks_like_a_setting_and_is_none_is_told() -> None:
    warnings = list(unknown({"DUCTRUN_MAX_BODY_BYTE": "1", "DUCTRUN_SERVICE_HOST": "10.0.0.1", "DUCTRUN_LOG": "x"}))
    assert list(unknown({"DUCTRUN_BROWSER": "1", "DUCTRUN_FUZZ_EXAMPLES": "9"})) == []
    assert warnings == ["DUCTRUN_MAX_BODY_BYTE is no setting and is passed over; is DUCTRUN_MAX_BODY_BYTES meant?"]


@pytest.mark.parametrize("setting", fields(Settings), ids=lambda one: one.name)
def test_every_setting_stands_in_the_page_of_whoever_runs_it_with_its_default(setting: Any) -> None:
    page = (REPOSITORY / "docs/deployment.md").read_text(encoding="utf-8")
    [row] = [line for line in page.splitlines() if line.startswith(f"| `{name_of(setting)}` |")]
    default = {True: "true", False: "false", (): "none"}.get(setting.default, str(setting.default))
    assert row.split("|")[2].strip() == default
    assert setting.metadata["meaning"] in row


@pytest.mark.parametrize("host", ["127.0.0.1", "::1", "localhost", "127.8.8.8"])
def test_no_key_is_needed_on_loopback(host: str) -> None:
    assert check_open(host, Settings()) is None  # type: ignore[func-returns-value]


@pytest.mark.parametrize("host", ["0.0.0.0", "::", "192.0.2.1", "example.invalid"])  # noqa: S104
def test_an_address_of_others_needs_keys_or_a_gateway_that_asks_for_them(host: str) -> None:
    with pytest.raises(RefusedError, match="OPEN_BEHIND_GATEWAY"):
        check_open(host, Settings())
    check_open(host, Settings(key_hashes=(HASH,)))
    check_open(host, Settings(open_behind_gateway=True))


def test_several_processes_are_refused_where_their_figures_cannot_be_written(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(tempfile, "tempdir", str(tmp_path))
    assert Path(shared_figures()).parent == tmp_path
    monkeypatch.setattr(tempfile, "tempdir", str(tmp_path / "nowhere"))
    with pytest.raises(RefusedError, match="DUCTRUN_METRICS=false, or start one process in each container"):
        shared_figures()
