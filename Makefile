# The whole developer surface: setup, serve, test, check, bench; contract, clients and lock mend what check reports.
PYTHON ?= python3
HOST ?= 127.0.0.1
PORT ?= 8000
WORKERS ?= 1
BIN := .venv/bin
STAMP := .venv/.made-from-lock

.DEFAULT_GOAL := help
.PHONY: help setup serve test check factors contract clients bench fuzz soak proxy dask parts lock clean

help:
	@echo "make setup     make .venv from the hashed lock (python3 3.11 to 3.13 is all it needs)"
	@echo "make serve     answer on http://$(HOST):$(PORT) (PORT=..., HOST=..., WORKERS=...)"
	@echo "make test      every test; make check: lint, types, import rules, contract drift, client drift"
	@echo "make contract  rewrite openapi/v1.json; make clients: regenerate the clients from it"
	@echo "make factors   have pint write units/factors.csv"
	@echo "make bench     speed and memory as ratios from one run, into build/benchmarks (about four minutes)"
	@echo "make proxy     docker/nginx.conf before two live replicas (needs an nginx); make dask: partitions on a local cluster"
	@echo "make parts     list every part of the service with its licence, into build/parts.json (CycloneDX)"
	@echo "make soak      overload, stalled callers, killed workers, hostile bodies, into build/soak (DUCTRUN_SOAK_SECONDS=120)"
	@echo "make fuzz      the longer fuzzing of schema, hills and requests; make lock: resolve the dependencies anew"

setup: $(STAMP)

$(STAMP): requirements-dev.lock pyproject.toml
	@$(PYTHON) -c 'import sys; sys.exit(not ((3, 11) <= sys.version_info[:2] < (3, 14)))' 2>/dev/null || { \
	  echo "ductrun needs Python 3.11, 3.12 or 3.13; '$(PYTHON)' is $$($(PYTHON) --version 2>/dev/null || echo missing)." \
	       "Name another one: make $(MAKECMDGOALS) PYTHON=python3.12"; exit 1; }
	@echo "making .venv from requirements-dev.lock (about a minute the first time)"
	@rm -rf .venv && $(PYTHON) -m venv .venv
	@if command -v uv >/dev/null 2>&1; then \
	  VIRTUAL_ENV=.venv uv pip sync -q --require-hashes requirements-dev.lock && \
	  VIRTUAL_ENV=.venv uv pip install -q --no-deps --no-build-isolation -e .; \
	else \
	  $(BIN)/python -m pip install -q --disable-pip-version-check --no-deps --no-compile --only-binary :all: \
	    --require-hashes -r requirements-dev.lock && \
	  $(BIN)/python -m pip install -q --disable-pip-version-check --no-deps --no-build-isolation -e .; \
	fi
	@touch $@

serve: $(STAMP)
	@exec $(BIN)/ductrun serve --host $(HOST) --port $(PORT) --workers $(WORKERS)

test: $(STAMP)
	$(BIN)/python -m pytest --cov --cov-report=term:skip-covered
	@$(BIN)/coverage report --include='*/engineering/*,*/kit/*,*/subjects/*' --fail-under=95 --format=total >/dev/null || \
	  { echo "branch coverage of engineering and operations is under 95 %"; exit 1; }

check: $(STAMP)
	$(BIN)/ruff check .
	$(BIN)/ruff format --check .
	$(BIN)/mypy
	$(BIN)/lint-imports --no-cache
	$(BIN)/python -m tools.factors
	$(BIN)/python -m tools.contract
	$(BIN)/python -m tools.gate
	$(BIN)/python -m tools.clients
	$(BIN)/hadolint docker/Dockerfile
	$(BIN)/kubernetes-validate --quiet --strict docker/kubernetes/ductrun.yaml
	$(BIN)/check-jsonschema --quiet --builtin-schema vendor.compose-spec docker/compose.yaml

contract: $(STAMP)
	$(BIN)/ductrun contract > openapi/v1.json.new && mv openapi/v1.json.new openapi/v1.json

clients: contract
	$(BIN)/python -m tools.clients --write

factors: $(STAMP)
	$(BIN)/python -m tools.factors --write

bench: $(STAMP)
	$(BIN)/python -m tools.benchmarks

fuzz: $(STAMP)
	DUCTRUN_FUZZ_EXAMPLES=400 DUCTRUN_HILLY_ROUTES=2000 $(BIN)/python -m pytest tests/contract/test_fuzzing.py \
	  tests/contract/test_edges.py tests/properties/test_hills.py tests/properties/test_requests.py

lock:
	uv pip compile -q --universal --python-version 3.11 --generate-hashes --no-emit-index-url --no-annotate --no-header \
	  pyproject.toml -o requirements.lock
	uv pip compile -q --universal --python-version 3.11 --generate-hashes --no-emit-index-url --no-annotate --no-header \
	  --group dev pyproject.toml -c requirements.lock -o requirements-dev.lock

proxy: $(STAMP)
	$(BIN)/python -m pytest tests/apart/proxy.py

dask: $(STAMP)
	$(BIN)/python -m pip install -q --disable-pip-version-check --no-deps --only-binary :all: --require-hashes \
	  --upgrade --target build/dask -r requirements-dask.lock
	PYTHONPATH=build/dask $(BIN)/python -m pytest -W default tests/apart/partitions.py

parts: $(STAMP)
	$(BIN)/python -m tools.parts

soak: $(STAMP)
	$(BIN)/python -m tools.soak

clean:
	rm -rf .venv build dist *.egg-info service/*.egg-info .pytest_cache .mypy_cache .ruff_cache .hypothesis .coverage
