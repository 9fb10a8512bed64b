"""Tests that need what is not among the dependencies; each has a target of its own in the Makefile."""
