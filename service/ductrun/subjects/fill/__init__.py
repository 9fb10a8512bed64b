"""What fits in a conduit."""
