"""What a handful of figures says: how many, their mean, how far they spread about it.

The sample mean and the sample variance, s² = Σ(x − mean)² / (n − 1), as in the NIST/SEMATECH
e-Handbook of Statistical Methods, 1.3.5.1 and 1.3.5.6. Exact but for the spread, √s²: a root has
no end of decimals, and is asked for up to a step or compared by its square.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from fronts.rules.fits import mean_of
from fronts.rules.lengths import Mm
from fronts.rules.roots import root_up


@dataclass(frozen=True, slots=True)
class Sample:
    """`variance` in mm², None of a single figure: that has no spread."""

    count: int
    mean: Mm
    variance: Fraction | None

    def spread(self, step: Mm, times: int = 1) -> Mm | None:
        """So many standard deviations, up to the next step."""
        return None if self.variance is None else root_up(self.variance * times**2, step)

    def is_off(self, errors: int) -> bool:
        """Whether the mean is farther from nothing than so many standard errors, s/√n.

        Said of squares: mean² · n > errors² · s². This is Student's t against `errors`
        (e-Handbook, 7.2.2).
        """
        if self.variance is None:
            return False
        return self.mean**2 * self.count > self.variance * errors**2


def sample_of(figures: Sequence[Mm]) -> Sample | None:
    """What the figures say; None: there are none."""
    if not figures:
        return None
    count = len(figures)
    mean = mean_of(figures)
    if count == 1:
        return Sample(count, mean, None)
    squares = sum(((figure - mean) ** 2 for figure in figures), Fraction(0))
    return Sample(count, mean, squares / (count - 1))
