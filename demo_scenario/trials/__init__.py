"""Trials of the running house: ended at random instants, and looked at afterwards."""
