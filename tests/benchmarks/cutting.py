"""How close the cutting plans come: `python -m tests.benchmarks.cutting [FOLDER] [--seconds 2 10]`.

Per public set: how many instances there are, how many plans reach the best published value within
each limit, how many are proved the least; and the same for a general packing library (`rectpack`,
guillotine mode, where it is installed) in the same run. FOLDER holds `sticks.json`, `sheets.json`;
without one, the tests' excerpt is used. Twenty made-up kitchens come last.
"""

import argparse
import importlib
import sys
import time
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import TypeAlias

from fronts.cutting.model import Plan, Request
from fronts.cutting.plan import plan
from tests.benchmarks.figures import Figure
from tests.benchmarks.instances import Case, excerpt, folder_of, kitchens

Library: TypeAlias = Callable[[Request], int | None]
HEADS = ("set", "cases", "reached", "proved", "used", "bound", "widest", "library", "its used",
         "worse than it", "slowest s")  # fmt: skip


@dataclass
class Tally:
    """Counts over one group and one limit."""

    cases: int = 0
    reached: int = 0
    proved: int = 0
    used: int = 0
    bound: int = 0
    widest: int = 0
    library: int = 0
    library_used: int = 0
    worse: int = 0
    slowest: float = 0.0


QUICK_SECONDS = 2.0


def figures() -> Iterator[Figure]:
    """On the tests' excerpt and the kitchens, within 2 s each: what falls short of the best."""
    tallies: dict[str, Tally] = {}
    for case in (*excerpt(), *kitchens()):
        tally = tallies.setdefault(case.group, Tally())
        _count(tally, case, plan(case.request, QUICK_SECONDS), None, detail=False)
    for group, tally in tallies.items():
        over, open_ = tally.cases - tally.reached, tally.cases - tally.proved
        yield Figure(f"{group}: over the best known, of {tally.cases}", over, "plans", None)
        yield Figure(f"  {group}: not proved least, of {tally.cases}", open_, "plans", None)


def main() -> None:
    """Run every limit over every instance and print the tables."""
    options = _options()
    clock = time.process_time if options.processor else time.perf_counter
    public = excerpt() if options.folder is None else folder_of(options.folder)
    cases = [case for case in (*public, *kitchens()) if options.only in case.group]
    cases = cases[:: options.every]
    library = _library()
    print("library:", "rectpack, guillotine" if library else "rectpack is not installed")
    for seconds in options.seconds:
        tallies: dict[str, Tally] = {}
        for case in cases:
            started = clock()
            found = plan(case.request, seconds, clock)
            tally = tallies.setdefault(case.group, Tally())
            tally.slowest = max(tally.slowest, clock() - started)
            _count(tally, case, found, library, detail=options.detail)
        _print(seconds, tallies)


def _options() -> argparse.Namespace:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("folder", nargs="?", type=Path)
    parser.add_argument("--seconds", nargs="+", type=float, default=[2.0, 10.0])
    parser.add_argument("--every", type=int, default=1, help="take every n-th instance only")
    parser.add_argument("--only", default="", help="sets whose name holds this text")
    parser.add_argument("--detail", action="store_true", help="print what falls short")
    parser.add_argument(
        "--processor", action="store_true", help="count processor seconds: for a shared machine"
    )
    return parser.parse_args()


def _count(tally: Tally, case: Case, found: Plan, library: Library | None, *, detail: bool) -> None:
    value = float(found.cost) if case.priced and found.cost is not None else found.sheets_used
    reached = case.best is None or value <= case.best
    tally.cases += 1
    tally.proved += found.proved
    tally.reached += reached
    tally.used += found.sheets_used
    tally.bound += found.lower_bound
    tally.widest = max(tally.widest, found.sheets_used - found.lower_bound)
    if not case.priced and case.best is not None and found.lower_bound > case.best:
        sys.exit(f"{case.name}: bound {found.lower_bound} is over a known plan of {case.best}")
    other = library(case.request) if library and not case.request.sticks else None
    if other is not None and not case.priced:
        tally.library += case.best is None or other <= case.best
        tally.library_used += other
        tally.worse += found.sheets_used > other
    if detail and not (reached and found.proved):
        bound = found.lower_bound if found.cost_bound is None else float(found.cost_bound)
        print(f"  {case.name}: {value:g}, best {case.best}, bound {bound:g}", flush=True)


def _print(seconds: float, tallies: dict[str, Tally]) -> None:
    print(f"\n{seconds:g} s a file")
    print("".join(f"{head:>15}" for head in HEADS))
    for group, t in tallies.items():
        row = (group, t.cases, t.reached, t.proved, t.used, t.bound, t.widest, t.library,
               t.library_used, t.worse, f"{t.slowest:.2f}")  # fmt: skip
        print("".join(f"{value!s:>15}" for value in row), flush=True)


def _library() -> Library | None:
    """What the library's guillotine mode needs; tenths of a millimetre, kerf added to each part."""
    try:
        rectpack = importlib.import_module("rectpack")
    except ImportError:
        return None

    def sheets(request: Request) -> int | None:
        packer = rectpack.newPacker(
            mode=rectpack.PackingMode.Offline,
            pack_algo=rectpack.GuillotineBssfSas,
            rotation=False,
        )
        kerf, board = request.kerf, request.stock[0]
        wanted = 0
        for part in request.parts:
            for _ in range(part.count):
                packer.add_rect(*(int((s + kerf) * 10) for s in (part.length, part.width or 0)))
                wanted += 1
        usable = (s - 2 * request.trim + kerf for s in (board.length, board.width or 0))
        packer.add_bin(*(int(s * 10) for s in usable), count=float("inf"))
        packer.pack()
        return len(packer) if len(packer.rect_list()) == wanted else None

    return sheets


if __name__ == "__main__":
    main()
