"""Runs the benchmarks that are named, or all of them, and prints their figures as a table."""

import os
import sys
from collections.abc import Iterator, Sequence
from importlib import import_module
from pathlib import Path

import django

from tests.benchmarks.figures import Figure, table

FOLDER = Path(__file__).parent
NO_BENCHMARKS = {
    "__init__", "__main__", "browser_speed", "figures", "instances", "larger", "over_http",
}  # fmt: skip


def main(names: Sequence[str]) -> int:
    """Measure, and print what was found; an exit code other than 0 where a name is none."""
    known = sorted(path.stem for path in FOLDER.glob("*.py") if path.stem not in NO_BENCHMARKS)
    unknown = [name for name in names if name not in known]
    if unknown:
        print(f"No benchmark {', '.join(unknown)}; there are: {', '.join(known)}", file=sys.stderr)
        return 2
    os.environ.setdefault("DJANGO_SETTINGS_MODULE", "tests.settings")
    django.setup()
    print(table(list(_figures(names or known))))
    return 0


def _figures(names: Sequence[str]) -> Iterator[Figure]:
    for name in names:
        print(f"measuring: {name} …", file=sys.stderr, flush=True)
        yield from import_module(f"tests.benchmarks.{name}").figures()


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
