"""Whole runs side by side, and ranked."""
