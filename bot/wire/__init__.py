"""The only room that knows the messaging library: receive, edge, send, faults."""

import os

# The library warns at every 429 unless told to speak of durations as timedelta, its next form.
os.environ.setdefault("PTB_TIMEDELTA", "true")
