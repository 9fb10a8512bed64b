"""What would make a run comply: changes of one thing, each verified by running it."""
