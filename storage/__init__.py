"""What was said and what was decided: tables, queries and migrations."""
