"""A client of ductrun: `Client` and `AsyncClient`, the models of the contract, and what may go wrong."""

from . import models
from .client import AsyncClient, Client
from .errors import CutOffError, DuctrunError, ProblemError, QuantityError, UnexpectedAnswerError
from .items import BatchItem, StreamItem, UnknownAnswer
from .quantities import PintQuantity, Quantity, Registry, in_pint
from .requesting import Retries

__all__ = [
    "AsyncClient",
    "BatchItem",
    "Client",
    "CutOffError",
    "DuctrunError",
    "PintQuantity",
    "ProblemError",
    "Quantity",
    "QuantityError",
    "Registry",
    "Retries",
    "StreamItem",
    "UnexpectedAnswerError",
    "UnknownAnswer",
    "in_pint",
    "models",
]
