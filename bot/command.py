"""Where the command ``holdwell`` begins. The process that draws begins here too: keep it light.

A fresh worker process loads the module that its house was started from. What is imported at the
top here is loaded twice and stays in memory twice.
"""


def main() -> None:
    """Hand over to the command line."""
    from bot.cli import main as run  # noqa: PLC0415  heavy, and of no use to a worker

    run()
