"""The figures of use, in the form of Prometheus, over all workers of a process together."""

from __future__ import annotations

import glob
import os
import threading
from functools import cache
from pathlib import Path
from typing import Any, Final

from ductrun import __version__
from ductrun.tables import TABLES

SHARED: Final = "PROMETHEUS_MULTIPROC_DIR"  # where workers share their figures; the library's own name for it
REJECTIONS: Final = {
    401: "key_missing",
    403: "key_refused",
    408: "too_slow",
    413: "body_too_large",
    414: "target_too_long",
    431: "head_too_large",
    503: "overloaded",
}
_making = threading.Lock()
_BUCKETS = (0.0005, 0.001, 0.0025, 0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1.0, 2.5, 5.0, 10.0, 60.0)


class Metrics:
    """The figures, made when first asked for: a start need not wait for the library."""

    def __init__(self) -> None:
        """Make them all."""
        import prometheus_client as client  # noqa: PLC0415  (a slow import)

        self.registry = client.CollectorRegistry()
        options: Any = {"registry": self.registry}
        self._requests = client.Counter("ductrun_requests", "Requests answered.", ["operation", "status"], **options)
        self._seconds = client.Histogram(
            "ductrun_request_seconds", "Time to the end of the answer.", ["operation"], buckets=_BUCKETS, **options
        )
        self._items = client.Counter("ductrun_items", "Items of batches and streams.", ["operation"], **options)
        self._rejections = client.Counter("ductrun_rejections", "Requests not worked on.", ["reason"], **options)
        self.in_flight = client.Gauge(
            "ductrun_requests_in_flight", "Requests at work.", multiprocess_mode="livesum", **options
        )
        build = client.Gauge(
            "ductrun_build_info", "Versions.", ["version", "tables"], multiprocess_mode="max", **options
        )
        build.labels(__version__, TABLES.hash).set(1)

    def count(self, operation: str, status: int, seconds: float, items: int | None) -> None:
        """Count a request that is over."""
        self._requests.labels(operation, str(status)).inc()
        self._seconds.labels(operation).observe(seconds)
        if items:
            self._items.labels(operation).inc(items)
        if status in REJECTIONS and operation != "readyz":
            self._rejections.labels(REJECTIONS[status]).inc()

    def written(self) -> bytes:
        """Write the figures of this process, or of all workers where they share them."""
        import prometheus_client as client  # noqa: PLC0415  (a slow import)
        from prometheus_client import multiprocess  # noqa: PLC0415

        registry, shared = self.registry, os.environ.get(SHARED)
        if shared:
            _forget_the_dead(shared)
            registry = client.CollectorRegistry()
            multiprocess.MultiProcessCollector(registry)  # type: ignore[no-untyped-call]
        return client.generate_latest(registry)


def metrics() -> Metrics:
    """Give the one set of figures of this process, whoever asks first."""
    with _making:  # a cache alone lets two threads make one each
        return _metrics()


@cache
def _metrics() -> Metrics:
    return Metrics()


def _forget_the_dead(shared: str) -> None:
    """Drop what a worker that was killed had in flight; what it counted stays."""
    for file in glob.glob(f"{glob.escape(shared)}/gauge_live*_*.db"):  # noqa: PTH207  (as the library finds them)
        process = file.rpartition("_")[2].removesuffix(".db")
        if process.isdecimal() and not Path(f"/proc/{process}").exists() and Path("/proc/self").exists():
            Path(file).unlink(missing_ok=True)
