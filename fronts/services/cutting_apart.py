"""A plan from a process of its own: it may take a whole core and leaves the pages theirs.

Run as a module it reads a request as JSON and writes its plan; it needs no database.
"""

import json
import os
import subprocess
import sys
from pathlib import Path
from typing import Any

from fronts.cutting.model import Request
from fronts.cutting.plan import plan
from fronts.cutting.plan_json import plan_to_store, request_to_store, stored_request

ROOT = Path(__file__).resolve().parents[2]
NICE = 10
"""The pages come before the plan."""


class PlanLost(RuntimeError):  # noqa: N818 - it says what happened
    """The process ended without a plan; the message is what it said last."""


def planned_apart(request: Request, seconds: int, *, patience: float) -> dict[str, Any] | None:
    """The plan as it is kept, or None where none came within `patience` seconds."""
    asked = json.dumps({"seconds": seconds, "request": request_to_store(request)})
    try:
        done = subprocess.run(
            [sys.executable, "-m", __name__],
            input=asked,
            capture_output=True,
            text=True,
            encoding="utf-8",
            cwd=ROOT,
            timeout=patience,
        )
    except subprocess.TimeoutExpired:
        return None
    if done.returncode:
        raise PlanLost(done.stderr[-2000:])
    stored: dict[str, Any] = json.loads(done.stdout)
    return stored


def main() -> None:
    """What the process does."""
    os.nice(NICE)
    asked = json.loads(sys.stdin.buffer.read().decode())
    made = plan(stored_request(asked["request"]), float(asked["seconds"]))
    sys.stdout.buffer.write(json.dumps(plan_to_store(made)).encode())


if __name__ == "__main__":
    main()
