"""Learn the weights of the red-flag reader's third net from lines written for it."""
