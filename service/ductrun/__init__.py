"""ductrun: the engineering behind a conduit run, answered over HTTP with every number defended."""

__version__ = "1.0.0"
