"""A headless Chromium, driven through chromedriver by the WebDriver protocol, which is plain HTTP."""

from __future__ import annotations

import base64
import json
import shutil
import subprocess
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any, TypeVar

import httpx
from tools.live import free_port

Found = TypeVar("Found")
_ELEMENT = "element-6066-11e4-a52e-4f735466cecf"  # what the protocol calls an element
TAB, ENTER = "\ue004", "\ue007"


class Browser:
    """One window; everything that was fetched and everything the console said is kept."""

    def __init__(self, http: httpx.Client) -> None:
        self._http = http
        self._events: list[dict[str, Any]] = []

    def _ask(self, method: str, path: str, **body: Any) -> Any:
        content = json.dumps(body) if method == "POST" else None
        answer = self._http.request(method, path, content=content).json()["value"]
        if isinstance(answer, dict) and "error" in answer:
            raise AssertionError(f"{answer['error']}: {answer['message'][:300]}")
        return answer

    def go(self, url: str) -> None:
        self._ask("POST", "url", url=url)

    def run(self, script: str, *arguments: Any) -> Any:
        return self._ask("POST", "execute/sync", script=script, args=list(arguments))

    def wait(self, look: Callable[[], Found], seconds: float = 20) -> Found:
        """Look until there is something."""
        deadline = time.monotonic() + seconds
        while not (found := look()):
            assert time.monotonic() < deadline, "nothing came"
            time.sleep(0.05)
        return found

    def click(self, css: str) -> None:
        [element] = self.wait(lambda: self._ask("POST", "elements", using="css selector", value=css))[:1]
        self.run("arguments[0].scrollIntoView({block: 'center'})", element)
        self._ask("POST", f"element/{element[_ELEMENT]}/click")

    def press(self, *keys: str) -> None:
        strokes = [{"type": kind, "value": key} for key in keys for kind in ("keyDown", "keyUp")]
        self._ask("POST", "actions", actions=[{"type": "key", "id": "keys", "actions": strokes}])

    def picture(self, path: Path) -> None:
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_bytes(base64.b64decode(self._ask("GET", "screenshot")))

    def said(self) -> list[str]:
        """Give what the console said that is more than a note: faults, and what the policy of the page forbade."""
        return [entry["message"] for entry in self._ask("POST", "se/log", type="browser") if entry["level"] != "INFO"]

    def fetched(self) -> list[str]:
        """Give every address that was asked for."""
        for entry in self._ask("POST", "se/log", type="performance"):
            self._events.append(json.loads(entry["message"])["message"])
        asked = [event["params"] for event in self._events if event["method"] == "Network.requestWillBeSent"]
        return [one["request"]["url"] for one in asked]


@contextmanager
def browser(*, width: int, height: int, phone: bool = False) -> Iterator[Browser]:
    """Open a window, a phone's or a desk's."""
    driver, chromium = shutil.which("chromedriver"), shutil.which("chromium") or shutil.which("google-chrome")
    assert driver, "this needs chromedriver (Debian: chromium-driver)"
    assert chromium, "this needs chromium"
    port = free_port()
    process = subprocess.Popen([driver, f"--port={port}", "--log-level=OFF"], stdout=subprocess.DEVNULL)
    try:
        options: dict[str, Any] = {
            "binary": chromium,
            "args": ["--headless", "--no-sandbox", "--disable-gpu", f"--window-size={width},{height}"],
        }
        if phone:
            options["mobileEmulation"] = {"deviceMetrics": {"width": width, "height": height, "pixelRatio": 2}}
        logged = {"browser": "ALL", "performance": "ALL"}
        wanted = {"alwaysMatch": {"goog:chromeOptions": options, "goog:loggingPrefs": logged}}
        with httpx.Client(base_url=f"http://127.0.0.1:{port}", timeout=60, trust_env=False) as http:
            _until_ready(http)
            session = http.post("/session", json={"capabilities": wanted}).json()["value"]
            assert "sessionId" in session, session
            http.base_url = httpx.URL(f"http://127.0.0.1:{port}/session/{session['sessionId']}/")
            try:
                yield Browser(http)
            finally:
                http.delete("")
    finally:
        process.terminate()
        process.wait(20)


def _until_ready(http: httpx.Client) -> None:
    for _ in range(200):
        try:
            if http.get("/status").json()["value"]["ready"]:
                return
        except httpx.TransportError:
            pass
        time.sleep(0.05)
    raise AssertionError("chromedriver did not start")
