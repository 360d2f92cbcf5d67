"""Files that people take along, from facts that were gathered: no storage, no messaging."""
