"""What holds for every test: no example fails because a machine is slow."""

from hypothesis import settings

settings.register_profile("house", deadline=None, print_blob=True)
settings.load_profile("house")
