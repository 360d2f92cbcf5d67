"""The messaging platform's Bot API on this machine alone, for the demo, tests and benchmarks."""
