"""A duct bank: spacers, concrete, and whether it floats."""
