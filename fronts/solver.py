"""The one door to the linear and integer solver (HiGHS, through highspy).

One thread, a fixed seed and bounds on its work, so that the same input gives the same answer;
the clock is only the last stop. Its numbers are floats: whoever calls a result a proof checks it
again in whole numbers.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any, TypeAlias

import highspy
import numpy as np
from numpy.typing import NDArray

Floats: TypeAlias = NDArray[np.float64]
Entry: TypeAlias = tuple[int, float]
"""A row's index and the coefficient in it."""

_SEED = 7


@dataclass(frozen=True, slots=True)
class Answer:
    """A linear program's answer: `duals` belong to the rows, `steps` are its iterations."""

    value: float
    amounts: Floats
    duals: Floats
    steps: int


@dataclass(frozen=True, slots=True)
class Whole:
    """An integer program's answer; `amounts` None where none was found, `late` by the clock.

    `is_proven`: the solver says that none is cheaper.
    """

    amounts: Floats | None
    steps: int
    late: bool
    is_proven: bool


class LinearProgram:
    """Least cost over columns that can be added later; each solve starts from the last one."""

    def __init__(self, low: Sequence[float], high: Sequence[float]) -> None:
        self._solver = _quiet()
        none = np.empty(0, np.int32)
        self._solver.addRows(
            len(low), np.array(low, float), np.array(high, float), 0, none, none, np.empty(0)
        )
        self._solver.setOptionValue("presolve", "off")
        self.columns = 0

    def add(
        self,
        costs: Sequence[float],
        columns: Sequence[Sequence[Entry]],
        most: float = highspy.kHighsInf,
    ) -> None:
        """Append columns that may take any amount from nothing to `most`."""
        count = len(columns)
        starts, rows, values = _sparse(columns)
        self._solver.addCols(
            count, np.array(costs, float), np.zeros(count), np.full(count, most),
            len(rows), starts, rows, values,
        )  # fmt: skip
        self.columns += count

    def limit(self, most: Floats) -> None:
        """Set the greatest amount of every column."""
        count = self.columns
        which = np.arange(count, dtype=np.int32)
        self._solver.changeColsBounds(count, which, np.zeros(count), most)

    def price(self, first: int, costs: Floats) -> None:
        """Change the costs of columns, from the `first` on."""
        which = np.arange(first, first + len(costs), dtype=np.int32)
        self._solver.changeColsCost(len(costs), which, costs)

    def demand(self, row: int, low: float, high: float = highspy.kHighsInf) -> None:
        """Change what one row asks for."""
        self._solver.changeRowBounds(row, low, high)

    def solve(self, seconds: float) -> Answer | None:
        """The least cost, or None where there is no answer (infeasible, or out of time)."""
        until = self._solver.getRunTime() + max(seconds, 0.001)
        self._solver.setOptionValue("time_limit", until)
        self._solver.run()
        if self._solver.getModelStatus() != highspy.HighsModelStatus.kOptimal:
            return None
        found = self._solver.getSolution()
        info = self._solver.getInfo()
        amounts, duals = np.array(found.col_value), np.array(found.row_dual)
        return Answer(info.objective_function_value, amounts, duals, info.simplex_iteration_count)


@dataclass(frozen=True, slots=True)
class IntegerLimits:
    """Where an integer solve stops: nodes first (the same each time), the clock last."""

    seconds: float
    nodes: int = 20_000


def solve_integer(
    costs: Sequence[float],
    columns: Sequence[Sequence[Entry]],
    rows: Sequence[tuple[float, float]],
    limits: IntegerLimits,
) -> Whole:
    """The cheapest whole amounts of the columns found within the limits.

    `rows` are (low, high). There is no answer to start from and no target to stop at: the solver
    mistakes them by what its presolve takes off the objective (seen with 1.16). A row on the
    objective does both.
    """
    solver = _quiet()
    count = len(columns)
    none = np.empty(0, np.int32)
    low, high = np.array([r[0] for r in rows], float), np.array([r[1] for r in rows], float)
    solver.addRows(len(rows), low, high, 0, none, none, np.empty(0))
    starts, indices, values = _sparse(columns)
    upper = np.full(count, highspy.kHighsInf)
    solver.addCols(
        count, np.array(costs, float), np.zeros(count), upper, len(indices), starts, indices, values
    )
    which = np.arange(count, dtype=np.int32)
    whole = np.full(count, int(highspy.HighsVarType.kInteger), np.uint8)
    solver.changeColsIntegrality(count, which, whole)
    return _run_integer(solver, limits)


def _run_integer(solver: Any, limits: IntegerLimits) -> Whole:
    solver.setOptionValue("time_limit", max(limits.seconds, 0.001))
    solver.setOptionValue("mip_max_nodes", limits.nodes)
    solver.setOptionValue("mip_rel_gap", 0.0)
    solver.run()
    info = solver.getInfo()
    found = info.primal_solution_status == highspy.SolutionStatus.kSolutionStatusFeasible
    amounts = np.array(solver.getSolution().col_value) if found else None
    status = solver.getModelStatus()
    late = status == highspy.HighsModelStatus.kTimeLimit
    proven = status == highspy.HighsModelStatus.kOptimal
    return Whole(amounts, max(0, info.simplex_iteration_count), late, proven)


class _Silent(highspy.Highs):
    """HiGHS without callbacks: nothing here uses them, and enabling them prints a banner."""

    def __init__(self) -> None:
        super().__init__()  # type: ignore[no-untyped-call]

    def enableCallbacks(self) -> None:  # noqa: N802 (the library's name)
        self.silent()


def _quiet() -> Any:
    solver = _Silent()
    for option, value in (
        ("threads", 1),
        ("parallel", "off"),
        ("random_seed", _SEED),
    ):
        solver.setOptionValue(option, value)
    return solver


def _sparse(
    columns: Sequence[Sequence[Entry]],
) -> tuple[NDArray[np.int32], NDArray[np.int32], Floats]:
    sizes = np.fromiter((len(column) for column in columns), np.int32, len(columns))
    starts = np.zeros(len(columns), np.int32)
    np.cumsum(sizes[:-1], out=starts[1:])
    rows = np.array([row for column in columns for row, _ in column], np.int32)
    values = np.array([value for column in columns for _, value in column], float)
    return starts, rows, values
