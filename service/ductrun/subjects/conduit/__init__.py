"""Where a conduit may go and how it is joined."""
