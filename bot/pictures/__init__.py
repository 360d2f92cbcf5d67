"""Pages and charts, drawn from facts that are already in words; no storage, no messaging."""
