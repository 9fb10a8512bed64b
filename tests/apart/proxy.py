"""docker/nginx.conf before two live replicas: balance, a replica killed under load, streams that pass as they come.

`make proxy` runs it where there is an nginx, of Debian's packages say, on the path or named by NGINX.
"""

from __future__ import annotations

import http.client
import json
import math
import os
import shutil
import signal
import socket
import subprocess
import threading
import time
from collections import Counter
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from ductrun.settings import Settings
from tools.costly_requests import bare_run, run_of, under_earth
from tools.live import REPOSITORY, free_port, started

from tests.asking import EXAMPLES

FILL = json.dumps(EXAMPLES["fill"]).encode()
ITEM = json.dumps({"id": "a", "operation": "fill", "request": EXAMPLES["fill"]}).encode() + b"\n"
COSTLY = json.dumps(bare_run(under_earth(run_of(15, 4, 0)))).encode()
TYPE = {"Content-Type": "application/json"}
BEHIND = {"DUCTRUN_OPEN_BEHIND_GATEWAY": "true"}


@pytest.fixture
def proxied(tmp_path: Path) -> Iterator[tuple[int, list[Any]]]:
    """Give the port of the proxy, and its replicas: address and process."""
    nginx = os.environ.get("NGINX") or shutil.which("nginx")
    assert nginx, "install nginx-light, or name an nginx by NGINX"
    port = free_port()
    with started(environment=BEHIND) as one, started(environment=BEHIND) as two:
        written = (REPOSITORY / "docker/nginx.conf").read_text(encoding="ascii")
        for name, (address, _) in (("one:8000", one), ("two:8000", two)):
            assert written.count(name) == 1
            written = written.replace(name, address.removeprefix("http://"))
        written = written.replace("listen 8080", f"listen 127.0.0.1:{port}").replace("/tmp/", f"{tmp_path}/")  # noqa: S108
        own = "user root;\n" if os.geteuid() == 0 else ""  # large bodies go through files of this test's own
        (tmp_path / "nginx.conf").write_text(f"daemon off;\n{own}{written}", encoding="ascii")
        told = (tmp_path / "told").open("wb")
        proxy = subprocess.Popen(
            [nginx, "-p", str(tmp_path), "-c", str(tmp_path / "nginx.conf"), "-e", str(tmp_path / "early")], stderr=told
        )
        try:
            for _ in range(100):
                with socket.socket() as trial:
                    if not trial.connect_ex(("127.0.0.1", port)):
                        break
                time.sleep(0.05)
            yield port, [one, two]
        finally:
            proxy.send_signal(signal.SIGQUIT)
            proxy.wait(10)
            told.close()


def answered_by(replica: Any) -> int:
    connection = http.client.HTTPConnection(replica[0].removeprefix("http://"), timeout=10)
    connection.request("GET", "/metrics")
    told = connection.getresponse().read().decode()
    connection.close()
    lines = [line for line in told.splitlines() if line.startswith('ductrun_requests_total{operation="fill"')]
    return int(sum(float(line.split()[-1]) for line in lines))


def ask_on(port: int, until: float, statuses: Counter[int], most: float = math.inf) -> None:
    connection = http.client.HTTPConnection("127.0.0.1", port, timeout=30)
    while time.monotonic() < until and statuses.total() < most:
        connection.request("POST", "/v1/fill", FILL, TYPE)
        found = connection.getresponse()
        found.read()
        statuses[found.status] += 1
    connection.close()


def test_both_replicas_answer_and_the_figures_stay_inside(proxied: Any) -> None:
    port, replicas = proxied
    statuses: Counter[int] = Counter()
    ask_on(port, math.inf, statuses, most=100)
    time.sleep(1)
    shares = [answered_by(replica) for replica in replicas]
    assert min(shares) >= 45  # one caller is answered by turns, however quick either replica is
    callers = [threading.Thread(target=ask_on, args=(port, time.monotonic() + 2, statuses)) for _ in range(8)]
    for caller in callers:
        caller.start()
    for caller in callers:
        caller.join()
    assert set(statuses) == {200}
    time.sleep(1)
    busy = [answered_by(replica) - share for replica, share in zip(replicas, shares, strict=True)]
    assert sum(shares) == 100
    assert sum(busy) == statuses[200] - 100
    assert min(busy) > 0.1 * sum(busy)  # the quicker one takes more
    connection = http.client.HTTPConnection("127.0.0.1", port, timeout=10)
    connection.request("GET", "/metrics")
    assert connection.getresponse().status == 404
    connection.close()


@pytest.mark.parametrize("number", [signal.SIGKILL, signal.SIGTERM])
def test_no_single_call_fails_when_a_replica_goes_under_load(proxied: Any, number: signal.Signals) -> None:
    port, replicas = proxied
    statuses: Counter[int] = Counter()
    callers = [threading.Thread(target=ask_on, args=(port, time.monotonic() + 4, statuses)) for _ in range(8)]
    for caller in callers:
        caller.start()
    time.sleep(1.5)
    replicas[1][1].send_signal(number)
    for caller in callers:
        caller.join()
    assert set(statuses) == {200}
    assert statuses[200] > 100


def test_a_stream_passes_line_by_line_and_lacks_its_last_line_when_cut(proxied: Any) -> None:
    port, replicas = proxied
    connection = socket.create_connection(("127.0.0.1", port), timeout=10)
    connection.sendall(b"POST /v1/batch/stream HTTP/1.1\r\nHost: a\r\nContent-Type: application/jsonl\r\n")
    connection.sendall(b"Transfer-Encoding: chunked\r\n\r\n")
    found = b""
    for number in range(1, 4):  # each answer comes while the sender has more to say
        connection.sendall(b"%x\r\n%b\r\n" % (len(ITEM), ITEM))
        while b'"line":%d,' % number not in found:
            found += connection.recv(65_536)
    for _, process in replicas:
        process.kill()
    connection.settimeout(10)
    try:
        while more := connection.recv(65_536):
            found += more
    except OSError:
        pass
    connection.close()
    assert b'"type":"answer","line":3' in found
    assert b'"type":"summary"' not in found
    assert b'"type":"stopped"' not in found


def test_the_sender_of_a_stream_may_pause_for_longer_than_another(proxied: Any) -> None:
    port, _ = proxied
    connection = socket.create_connection(("127.0.0.1", port), timeout=10)
    connection.sendall(b"POST /v1/batch/stream HTTP/1.1\r\nHost: a\r\nContent-Type: application/jsonl\r\n")
    connection.sendall(b"Connection: close\r\nTransfer-Encoding: chunked\r\n\r\n")
    for pause, end in ((Settings().sender_seconds + 2, b""), (0, b"0\r\n\r\n")):
        connection.sendall(b"%x\r\n%b\r\n%b" % (len(ITEM), ITEM, end))
        time.sleep(pause)
    found = b""
    while more := connection.recv(65_536):
        found += more
    connection.close()
    assert b'{"type":"summary","item_count":2,"failed_count":0}' in found


def test_one_busy_caller_takes_no_replica_from_the_others(proxied: Any) -> None:
    port, _ = proxied
    statuses: Counter[int] = Counter()
    costly: Counter[int] = Counter()
    until = time.monotonic() + 4
    callers = [threading.Thread(target=ask_on, args=(port, until, statuses)) for _ in range(4)]
    callers += [threading.Thread(target=ask_costly, args=(port, until, costly)) for _ in range(8)]
    for caller in callers:
        caller.start()
    for caller in callers:
        caller.join()
    assert set(costly) == {200, 503}  # some were answered, and both replicas said that they have enough of them
    assert set(statuses) == {200}


def ask_costly(port: int, until: float, statuses: Counter[int]) -> None:
    while time.monotonic() < until:
        connection = http.client.HTTPConnection("127.0.0.1", port, timeout=60)
        connection.request("POST", "/v1/duct-run", COSTLY, TYPE)
        found = connection.getresponse()
        found.read()
        statuses[found.status] += 1
        connection.close()
        time.sleep(0.05)


def told_by(port: int, method: str, path: str, body: bytes, headers: dict[str, str]) -> tuple[Any, dict[str, Any]]:
    connection = http.client.HTTPConnection("127.0.0.1", port, timeout=10)
    connection.request(method, path, body, headers)
    found = connection.getresponse()
    told = json.loads(found.read())
    connection.close()
    return found, told


def test_what_the_proxy_refuses_is_a_problem_and_the_id_of_the_caller_is_kept(proxied: Any) -> None:
    port, replicas = proxied
    named = {**TYPE, "X-Request-ID": "of-the-caller.1"}
    found, _ = told_by(port, "POST", "/v1/fill", FILL, named)
    assert (found.status, found.headers["X-Request-ID"]) == (200, "of-the-caller.1")
    found, _ = told_by(port, "POST", "/v1/fill", FILL, {**TYPE, "X-Request-ID": "not a safe one"})
    assert len(found.headers["X-Request-ID"]) == 32
    cases = [
        ("GET", "/metrics", b"", named, 404, "/problems/not_found"),
        ("POST", "/v1/batch", b"", {**named, "Content-Length": "17000000"}, 413, "/problems/body_too_large"),
        ("GET", f"/{'a' * 9_000}", b"", named, 414, "/problems/target_too_long"),
        ("GET", "/livez", b"", {**named, "X-Long": "a" * 9_000}, 431, "/problems/head_too_large"),
        ("GET", "/v1/nothing", b"", named, 404, "/problems/not_found"),  # the service's own
    ]
    for method, path, body, headers, status, kind in cases:
        found, told = told_by(port, method, path, body, headers)
        assert (found.status, told["status"], told["type"]) == (status, status, kind)
        assert found.headers["Content-Type"] == "application/problem+json"
        assert told["request_id"] == found.headers["X-Request-ID"]
        assert status in {414, 431} or told["request_id"] == "of-the-caller.1"  # a head that was not read has no id
        assert told["title"]
        assert told["detail"]
    for _, process in replicas:
        process.kill()
    time.sleep(0.5)
    found, told = told_by(port, "POST", "/v1/fill", FILL, named)
    assert (found.status, told["status"], told["request_id"]) == (502, 502, "of-the-caller.1")
    assert found.headers["Content-Type"] == "application/problem+json"
    assert found.headers["Retry-After"] == "1"
