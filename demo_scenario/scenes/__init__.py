"""The scenes that are played beside the training: who does what, and when."""
