"""`plan_cuts` from the command line: JSON on standard output, faults on standard error."""

import json
import subprocess
import sys
from pathlib import Path

from tests.cutting.replay import replay
from tests.cutting.test_parts_file import GOOD

ROOT = Path(__file__).parents[2]


def run(*arguments: str, given: bytes = b"") -> subprocess.CompletedProcess[bytes]:
    """The command as a person runs it."""
    command = [sys.executable, "manage.py", "plan_cuts", *arguments]
    return subprocess.run(command, input=given, capture_output=True, cwd=ROOT, check=False)


def test_a_file_is_planned(tmp_path: Path) -> None:
    """Standard output holds the plan's JSON and nothing else."""
    file = tmp_path / "parts.json"
    file.write_text(json.dumps(GOOD), "utf-8")
    done = run(str(file), "--seconds", "1")
    assert (done.returncode, done.stderr) == (0, b"")
    replay(GOOD, json.loads(done.stdout))


def test_standard_input_is_planned() -> None:
    """A dash reads standard input."""
    done = run("-", given=json.dumps(GOOD).encode())
    assert json.loads(done.stdout)["sheets_used"] == 2


def test_a_refused_file_exits_2() -> None:
    """Each fault is a line on standard error; a part larger than all stock is named."""
    parts = [dict(GOOD["parts"][0], label="Tall", length="3000")]
    done = run("-", given=json.dumps(GOOD | {"parts": parts}).encode())
    assert done.returncode == 2
    assert done.stdout == b""
    (line,) = done.stderr.decode().strip().splitlines()
    assert line.startswith("parts[0]: found Tall, 3000 x 396 mm, wanted no larger than some stock")


def test_a_missing_file_and_absurd_seconds_exit_2() -> None:
    """No traceback for what can be typed."""
    for arguments in (("nowhere.json",), ("-", "--seconds", "nan"), ("-", "--seconds", "0")):
        done = run(*arguments)
        assert done.returncode == 2
        assert b"Traceback" not in done.stderr
