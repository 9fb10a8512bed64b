"""What is dug, and how deep conduit lies."""
