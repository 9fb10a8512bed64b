"""Schemathesis against the application in process, every check on; exceptions are in schemathesis.toml."""

from __future__ import annotations

import os
from typing import Any

import pytest
import schemathesis
from ductrun.http.app import create_app
from ductrun.settings import Settings
from hypothesis import HealthCheck, settings
from schemathesis.checks import CHECKS, load_all_checks

load_all_checks()
schema = schemathesis.openapi.from_asgi("/openapi.json", create_app(Settings()))
EXAMPLES = int(os.environ.get("DUCTRUN_FUZZ_EXAMPLES", "12"))

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
