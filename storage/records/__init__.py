"""What leaves storage: frozen values, so that nobody outside holds a row."""
