"""Whether cable can be pulled in, and from where."""
