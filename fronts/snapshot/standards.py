"""What one level says of the house standard, from its columns."""

from fronts.facts.rows import from_row
from fronts.models.standard import StandardFields
from fronts.rules.standard_keys import Standard
from fronts.rules.standards import EMPTY


def standard_of(level: StandardFields | None) -> Standard:
    """What one level says."""
    if level is None:
        return EMPTY
    said = from_row(Standard, level)
    return EMPTY if said == EMPTY else said
