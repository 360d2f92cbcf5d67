"""What is due next, for whom, and why: pure rules that read no clock and touch no network."""
