"""What docker/ tells a cluster and a proxy, against the settings of the service and against itself."""

from __future__ import annotations

import re

from ductrun import __version__
from ductrun.settings import Settings
from tools.live import REPOSITORY

CLUSTER = (REPOSITORY / "docker/kubernetes/ductrun.yaml").read_text(encoding="utf-8")
COMPOSED = (REPOSITORY / "docker/compose.yaml").read_text(encoding="utf-8")
PROXY, OF_STREAM = re.split(
    r"location = /v1/batch/stream", (REPOSITORY / "docker/nginx.conf").read_text(encoding="utf-8")
)
USUAL = Settings()


def figure(pattern: str, text: str) -> int:
    [found] = re.findall(pattern, text)
    return int(found)


def test_a_cluster_waits_for_a_stop_and_notices_it_before_requests_are_refused() -> None:
    drain = figure(r'DUCTRUN_DRAIN_SECONDS\n +value: "(\d+)"', CLUSTER)
    stop = figure(r'DUCTRUN_STOP_SECONDS\n +value: "(\d+)"', CLUSTER)
    [readiness] = re.findall(r"readinessProbe:(.*?)livenessProbe:", CLUSTER, re.DOTALL)
    failures, period = figure(r"failureThreshold: (\d+)", readiness), figure(r"periodSeconds: (\d+)", readiness)
    assert failures * period + figure(r"timeoutSeconds: (\d+)", readiness) < drain
    assert figure(r"terminationGracePeriodSeconds: (\d+)", CLUSTER) > drain + stop


def test_a_cluster_runs_the_version_there_is_and_leaves_the_number_of_replicas_to_the_autoscaler() -> None:
    assert re.findall(r"image: \S+:(\S+)", CLUSTER) == [__version__]
    assert not re.search(r"^ +replicas:", CLUSTER, re.MULTILINE)
    assert figure(r"minReplicas: (\d+)", CLUSTER) > figure(r"maxUnavailable: (\d+)\n  selector", CLUSTER)


def test_the_replicas_of_the_compose_file_outlast_their_stop() -> None:
    drain = figure(r'DUCTRUN_DRAIN_SECONDS: "(\d+)"', COMPOSED)
    stop = figure(r'DUCTRUN_STOP_SECONDS: "(\d+)"', COMPOSED)
    assert figure(r"stop_grace_period: (\d+)s", COMPOSED) > drain + stop


def test_the_proxy_lets_the_service_be_first_where_it_ends_with_words() -> None:
    keep_alive = figure(r'DUCTRUN_KEEP_ALIVE_SECONDS: "(\d+)"', COMPOSED)
    assert figure(r"keepalive_timeout (\d+)s", PROXY) < keep_alive
    assert figure(r"client_body_timeout (\d+)s", OF_STREAM) > USUAL.stream_idle_seconds
    assert figure(r"proxy_read_timeout (\d+)s", OF_STREAM) > USUAL.stream_idle_seconds
    assert figure(r"client_body_timeout (\d+)s", PROXY) == USUAL.sender_seconds
    assert figure(r"send_timeout (\d+)s", PROXY) == USUAL.reader_seconds
    assert figure(r"client_max_body_size (\d+)m", PROXY) << 20 == USUAL.max_batch_bytes
