"""Questions to the database by aggregate; what comes back are records, never rows."""
