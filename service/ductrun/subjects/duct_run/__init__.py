"""A whole run, composed of the other subjects: the only one that may see them all."""
