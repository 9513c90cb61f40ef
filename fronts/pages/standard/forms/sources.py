"""Where what holds of a shop's ways is from, while the shop says nothing."""

from fronts.rules.fact_kinds import EachSide
from fronts.rules.facts import facts_of
from fronts.rules.practice import NUMBERS
from fronts.rules.standard_keys import Standard

_NUMBERS = {number.name: number.metadata["source"] for number in NUMBERS}
_TABLES = {
    "hinges_by_height": "practice, memory",
    "hinges_by_weight": "practice, memory",
    "slide_classes": "Architectural Woodwork Standards, 1st ed., to 100 lb; above, from memory",
}
_KEYS = {
    f"{fact.declared.prefix}left" if isinstance(fact.declared, EachSide) else fact.name: getattr(
        fact.declared, "source", ""
    )
    for fact in facts_of(Standard)
}


def source_of(name: str) -> str:
    """The source as it is declared; common practice where none is."""
    return _NUMBERS.get(name) or _TABLES.get(name) or _KEYS.get(name) or "practice"
