"""The baseline: a bare FastAPI endpoint that validates the same request model and sends it back."""

from ductrun.subjects.pulling.pull_tension import PullTensionRequest
from fastapi import FastAPI

app = FastAPI()


@app.post("/echo")
async def echo(request: PullTensionRequest) -> PullTensionRequest:
    return request
