"""What several subjects ask for, settled once: conduit, conductors, cables, bank, route."""
