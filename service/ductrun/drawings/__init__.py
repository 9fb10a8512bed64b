"""Pictures of what was assessed, as SVG: small pure functions of plain numbers, which know nothing of HTTP."""
