"""How conduit moves and what holds it."""
