"""One file an act: load, decide, save, and write the messages, all in one transaction."""
