"""How solid wood moves with the year: moisture it comes to rest at, and the change in size.

Source: Wood Handbook (FPL-GTR-190, 2010): equilibrium moisture content by eq. 4-5
(Simpson, FPL-RN-0268), change of size by eq. 13-2 within 6-14 % and 13-3 beyond.
"""

from fractions import Fraction
from functools import lru_cache

from fronts.rules.lengths import Mm
from fronts.rules.materials import Wood

COEFFICIENT_FROM, COEFFICIENT_TO = Fraction(6), Fraction(14)
"""Moisture contents, in percent, between which eq. 13-2 holds."""
FIBRE_SATURATION = Fraction(30)
SHRINKAGE_BASE = Fraction(3000)
"""100 % times the 30 % over which green wood shrinks, eq. 13-3."""


HUNDRED = 100
TWO_HYDRATE = {
    "w": (349, 1.29, 0.0135),
    "k": (0.805, 0.000736, -0.00000273),
    "k1": (6.27, -0.00938, -0.000303),
    "k2": (1.91, 0.0407, -0.000293),
}
"""Eq. 4-5's constants for °C, as 1, T, T² (Simpson, FPL-RN-0268)."""
MOLAR = 1800


def emc_celsius(celsius: float, humidity: float) -> float:
    """Equilibrium moisture content in percent, at `humidity` percent RH.

    Two-hydrate equation of Hailwood and Horrobin with the handbook's constants for °C.
    """
    w, k, k1, k2 = (a + b * celsius + c * celsius**2 for a, b, c in TWO_HYDRATE.values())
    kh = k * humidity / HUNDRED
    one, two = k1 * kh, k1 * k2 * kh**2
    return MOLAR / w * (kh / (1 - kh) + (one + 2 * two) / (1 + one + two))


@lru_cache(maxsize=256)
def resting_moisture(celsius: Fraction, humidity: Fraction) -> Fraction:
    """The moisture content that wood comes to, in percent to two places."""
    return Fraction(round(emc_celsius(float(celsius), float(humidity)) * HUNDRED), HUNDRED)


def change(size: Mm, wood: Wood, made_at: Fraction, comes_to: Fraction) -> Mm:
    """Growth (negative: shrinkage) across the grain of a flatsawn piece, from one % to another."""
    low, high = min(made_at, comes_to), max(made_at, comes_to)
    if low >= COEFFICIENT_FROM and high <= COEFFICIENT_TO:
        return size * wood.tangential * (comes_to - made_at)
    high = min(comes_to, FIBRE_SATURATION)
    return size * (high - made_at) / (SHRINKAGE_BASE / wood.shrinkage - FIBRE_SATURATION + made_at)
