"""Who may do what: thin tables from command, button and event to act."""
