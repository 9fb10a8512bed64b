"""What a finished circuit carries and what it loses on the way."""
