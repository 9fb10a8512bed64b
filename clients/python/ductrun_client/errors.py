"""What may go wrong with a question, each an error of its own; faults of the connection are those of httpx."""

from __future__ import annotations

from collections.abc import Mapping

from .models import Fault, Problem


def media_type_of(headers: Mapping[str, str]) -> str:
    """Give the media type of a response, without its parameters."""
    return str(headers.get("Content-Type", "")).partition(";")[0].strip().lower()


class DuctrunError(Exception):
    """Whatever this client itself has to say."""


class ProblemError(DuctrunError):
    """The service has no answer to the question: `problem` says why, with every fault of it in `faults`.

    `headers` are those of the response, such as Retry-After.
    """

    def __init__(self, problem: Problem, headers: Mapping[str, str]) -> None:
        """Tell the problem in a sentence for each fault."""
        self.problem, self.headers = problem, headers
        self.faults: list[Fault] = problem.errors or []
        told = [f"{fault.pointer or fault.parameter or ''}: {fault.message}".lstrip(": ") for fault in self.faults]
        super().__init__("\n".join([f"{problem.title}. {problem.detail}", *told]))

    @property
    def status(self) -> int:
        """The HTTP status."""
        return self.problem.status


class UnexpectedAnswerError(DuctrunError):
    """What came back is no answer of the service: a page of a gateway, or of something else at this address."""

    def __init__(self, status: int, headers: Mapping[str, str], content: bytes, why: str = "") -> None:
        """Keep what came, and tell its beginning."""
        self.status, self.headers, self.content = status, headers, content
        self.content_type = content_type = media_type_of(headers)
        beginning = " ".join(content[:300].decode("utf-8", "replace").split())
        told = why or "that is no answer of the service: something before it has replied, or the address is another's"
        super().__init__(f"status {status}, {content_type or 'no content type'}: {told}. It begins: {beginning!r}")


class QuantityError(DuctrunError, ValueError):
    """A quantity cannot be sent as it is: its unit is none of its dimension, or its value no number."""

    def __init__(self, at: str, sentence: str) -> None:
        """Keep where it stands, as a JSON pointer in `pointer`."""
        super().__init__(f"{at or 'this'}: {sentence}")
        self.pointer = f"#{at}"


class CutOffError(DuctrunError):
    """A stream ended before its summary; `answered` questions were answered, the others can be asked again.

    `reason` is that of the service, where it ended the stream itself: `stopping`, or `idle`.
    """

    def __init__(self, answered: int, reason: str | None = None) -> None:
        """Keep how many were answered, and why no more."""
        told = "was cut off" if reason is None else f"was ended by the service ({reason})"
        super().__init__(f"the stream {told} after {answered} answers")
        self.answered, self.reason = answered, reason
