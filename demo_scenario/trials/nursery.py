"""Brings forth one child after another: everything is imported once, each child is a fork.

Run as ``python -m demo_scenario.trials.nursery PLAN``. Each line on stdin asks for a child, whose
process id is printed. When stdin ends, the child that still lives is killed and the nursery ends.
"""

import contextlib
import os
import signal
import sys
import traceback

from demo_scenario.trials.child import ChildPlan, run_child
from scheduler.calendar.zones import use_packaged_zones
from scheduler.catalogue.library import default_library
from scheduler.training.rulebook import default_rulebook


def main() -> None:
    """Warm up, then bear a child for each line."""
    plan = ChildPlan.model_validate_json(sys.argv[1])
    use_packaged_zones()
    default_library()
    default_rulebook()
    signal.signal(signal.SIGCHLD, signal.SIG_IGN)  # nobody waits for a child that was killed
    child = 0
    for _ in sys.stdin:
        child = _bear(plan)
        print(child, flush=True)
    if child:
        with contextlib.suppress(ProcessLookupError):
            os.kill(child, signal.SIGKILL)


def _bear(plan: ChildPlan) -> int:
    child = os.fork()
    if child:
        return child
    signal.signal(signal.SIGCHLD, signal.SIG_DFL)
    # The nursery's stdin is not the child's to read.
    os.close(0)
    try:
        run_child(plan)
    except BaseException:  # noqa: BLE001 (a fork must never return into its parent's loop)
        traceback.print_exc()
        os._exit(1)
    os._exit(0)


if __name__ == "__main__":
    main()
