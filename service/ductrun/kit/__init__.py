"""What every operation is made of: forms, worksheet, telling, answers."""
