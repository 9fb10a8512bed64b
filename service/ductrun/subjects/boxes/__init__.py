"""Where cable turns: pull boxes, handholes and manholes."""
