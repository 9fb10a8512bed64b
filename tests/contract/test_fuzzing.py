"""Schemathesis against the application in process and served, every check on; exceptions are in schemathesis.toml.

`make test` draws a few requests for each operation; `make fuzz` draws many, walks every bound of the schema too, and
asks a live server in every phase. The seed is fixed.
"""

from __future__ import annotations

import os
import subprocess
import sys
from typing import Any

import pytest
import schemathesis
from ductrun.http.app import create_app
from ductrun.settings import Settings
from hypothesis import HealthCheck, settings
from schemathesis.checks import CHECKS, load_all_checks
from tools.client_schemas import REPOSITORY
from tools.live import serving

from tests.contract import fuzzing_hooks as fuzzing_hooks  # noqa: PLC0414  (they register themselves)

load_all_checks()


schema = schemathesis.openapi.from_asgi("/openapi.json", create_app(Settings()), timeout=120)
EXAMPLES = (
    int(os.environ.get("DUCTRUN_FUZZ_EXAMPLES", "48")) // 4
)  # a body made of a schema takes longer than its answer
LONG = "DUCTRUN_FUZZ_EXAMPLES" in os.environ
schema.config.phases.coverage.enabled = LONG

pytestmark = pytest.mark.filterwarnings("ignore::DeprecationWarning", "ignore::ResourceWarning")


@schema.parametrize()
@settings(
    max_examples=EXAMPLES,
    deadline=None,
    derandomize=True,
    suppress_health_check=[HealthCheck.too_slow, HealthCheck.filter_too_much, HealthCheck.data_too_large],
)
def test_the_service_keeps_its_contract(case: Any) -> None:
    case.call_and_validate(checks=CHECKS.get_all())


@pytest.mark.live
@pytest.mark.skipif(not LONG, reason="make fuzz asks a live server")
def test_a_live_server_keeps_the_contract_in_every_phase() -> None:
    with serving() as address:
        command = ["run", f"{address}/openapi.json", "--checks=all", "--phases=examples,coverage,fuzzing,stateful"]
        done = subprocess.run(
            [sys.executable, "-m", "schemathesis.cli", *command, f"--max-examples={EXAMPLES // 2}", "--no-color"],
            cwd=REPOSITORY,
            env=os.environ | {"PYTHONPATH": str(REPOSITORY)},
            capture_output=True,
            text=True,
            check=False,
        )
    assert done.returncode == 0, done.stdout[-5000:] + done.stderr[-2000:]
