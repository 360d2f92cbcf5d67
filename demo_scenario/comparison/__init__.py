"""How our dosing behaves beside simpler progressions, on simulated bodies."""
