"""Wall time and zone to due instants, and until when a late one is still useful."""
