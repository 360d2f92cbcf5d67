"""How much the house carries, beside a bot of the same library that stores nothing."""
