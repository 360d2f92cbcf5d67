"""What the clock brings: one round a minute over everybody, each person in a transaction."""
