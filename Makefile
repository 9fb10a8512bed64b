# The whole developer surface: setup, serve, test, check, bench; contract, clients and lock mend what check reports.
PYTHON ?= python3
HOST ?= 127.0.0.1
PORT ?= 8000
WORKERS ?= 1
BUILDER ?= docker
BIN := .venv/bin
STAMP := .venv/.made-from-lock
NODE := checks/node_modules/.made-from-lock clients/typescript/node_modules/.made-from-lock

.DEFAULT_GOAL := help
.PHONY: help setup serve test coverage check lint wheel factors contract clients clients-mobile bench costs fuzz soak proxy dask image parts \
  docs-browser lock clean

help:
	@echo "make setup     make .venv from the hashed lock (python3 3.11 to 3.13 is all it needs)"
	@echo "make serve     answer on http://$(HOST):$(PORT) (PORT=..., HOST=..., WORKERS=...)"
	@echo "make test      every test; make coverage: the branches of engineering, kit and subjects; make check: lint, types, import rules, contract drift, client drift"
	@echo "make contract  rewrite openapi/v1.json; make clients: rewrite what follows from it in the clients"
	@echo "make lint      spectral, redocly, pyright, tsc (of make check); make wheel: the Python client as users get it"
	@echo "make factors   have pint write units/factors.csv"
	@echo "make docs-browser   the docs page in a real browser (needs chromium and chromium-driver), pictures in build/browser"
	@echo "make clients-mobile Kotlin and Swift from the contract into build (needs Java; npm and PyPI for its tools)"
	@echo "make bench     speed and memory as ratios from one run, into build/benchmarks (about four minutes)"
	@echo "make proxy     docker/nginx.conf before two live replicas (needs an nginx); make dask: partitions on a local cluster"
	@echo "make image     docker/Dockerfile as ductrun:VERSION (needs docker, podman or buildah, BUILDER=..., and their registry)"
	@echo "make parts     list every part of the service with its licence, into build/parts.json (CycloneDX)"
	@echo "make costs     the largest requests: seconds and memory of each beside what was reckoned"
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

%/node_modules/.made-from-lock: %/package-lock.json
	@echo "fetching what $*/package-lock.json names"
	@cd $* && npm ci --ignore-scripts --no-audit --no-fund --silent
	@touch $@

serve: $(STAMP)
	@exec $(BIN)/ductrun serve --host $(HOST) --port $(PORT) --workers $(WORKERS)

test: $(STAMP) $(NODE)
	$(BIN)/python -m pytest -n auto --dist worksteal

coverage: $(STAMP) $(NODE)
	$(BIN)/python -m pytest -q -n auto --dist worksteal --cov --cov-report= tests/engineering tests/kit tests/published \
	  tests/subjects tests/tables tests/http
	@$(BIN)/coverage report --include='*/engineering/*,*/kit/*,*/subjects/*' --fail-under=95 --skip-covered || \
	  { echo "branch coverage of engineering, kit and subjects is under 95 %"; exit 1; }

check: $(STAMP) $(NODE) lint wheel
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

lint: $(STAMP) $(NODE)
	cd checks && node_modules/.bin/spectral lint -r spectral.yaml -F hint --quiet ../openapi/v1.json
	cd checks && REDOCLY_TELEMETRY=off REDOCLY_SUPPRESS_UPDATE_NOTICE=true node_modules/.bin/redocly lint \
	  --config redocly.yaml ../openapi/v1.json
	$(BIN)/openapi-spec-validator openapi/v1.json
	checks/node_modules/.bin/pyright -p clients/python --pythonpath $(BIN)/python
	cd clients/typescript && node_modules/.bin/tsc && node --input-type=module -e 'import("ductrun-client")'

wheel: $(STAMP)
	$(BIN)/python -m tools.client_wheel

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
	  tests/contract/test_edges.py tests/properties tests/kit/test_reading.py tests/http/test_fault_codes.py -n auto --dist worksteal

clients-mobile: $(STAMP)
	$(BIN)/python -m tools.client_mobile

docs-browser: $(STAMP)
	DUCTRUN_BROWSER=1 $(BIN)/python -m pytest tests/browser

lock:
	uv pip compile -q --universal --python-version 3.11 --generate-hashes --no-emit-index-url --no-annotate --no-header \
	  pyproject.toml -o requirements.lock
	uv pip compile -q --universal --python-version 3.11 --generate-hashes --no-emit-index-url --no-annotate --no-header \
	  --group dev pyproject.toml -c requirements.lock -o requirements-dev.lock
	echo distributed | uv pip compile -q --universal --python-version 3.11 --generate-hashes --no-emit-index-url --no-annotate \
	  --no-header -c requirements-dev.lock - -o requirements-dask.lock

proxy: $(STAMP)
	$(BIN)/python -m pytest tests/apart/proxy.py

dask: $(STAMP)
	$(BIN)/python -m pip install -q --disable-pip-version-check --no-deps --only-binary :all: --require-hashes \
	  --upgrade --target build/dask -r requirements-dask.lock
	PYTHONPATH=build/dask $(BIN)/python -m pytest -W default tests/apart/partitions.py

image:
	@command -v $(firstword $(BUILDER)) >/dev/null || { \
	  echo "make image needs docker, podman (BUILDER=podman) or buildah (BUILDER=buildah)"; exit 1; }
	@version=$$(PYTHONPATH=service $(PYTHON) -m ductrun version) && \
	  $(BUILDER) build -f docker/Dockerfile --label org.opencontainers.image.version=$$version $(IMAGE_OPTIONS) -t ductrun:$$version .

parts: $(STAMP)
	$(BIN)/python -m tools.parts

costs: $(STAMP)
	$(BIN)/python -m tools.costs

soak: $(STAMP)
	$(BIN)/python -m tools.soak

clean:
	rm -rf .venv build dist checks/node_modules clients/*/node_modules clients/typescript/dist *.egg-info service/*.egg-info .pytest_cache .mypy_cache .ruff_cache .hypothesis .coverage
