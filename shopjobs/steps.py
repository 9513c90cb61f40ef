"""The cutting steps that a shop chooses from, exact in millimetres."""

from decimal import Decimal

INCH = Decimal("25.4")
STEPS: dict[str, dict[Decimal, str]] = {
    "Inches": {
        INCH / 4: "1/4 in",
        INCH / 8: "1/8 in",
        INCH / 16: "1/16 in",
        INCH / 32: "1/32 in",
        INCH / 64: "1/64 in",
    },
    "Millimetres": {
        Decimal("2"): "2 mm",
        Decimal("1"): "1 mm",
        Decimal("0.5"): "0.5 mm",
        Decimal("0.1"): "0.1 mm",
    },
}


GROUP = {"in": "Inches", "mm": "Millimetres"}
"""The list's group of a unit."""
USUAL = {"in": INCH / 16, "mm": Decimal("1")}
"""The step that a unit starts with (common practice, no source)."""


def unit_of(step: Decimal) -> str | None:
    """Return the unit whose list has the step; None for one that is on neither."""
    return next((unit for unit, group in GROUP.items() if step in STEPS[group]), None)


def step_text(step: Decimal) -> str:
    """Show a step; one that is not on the list is shown in millimetres."""
    for steps in STEPS.values():
        if step in steps:
            return steps[step]
    return f"{tidy(step)} mm"


def tidy(step: Decimal) -> Decimal:
    """Return the same step without trailing zeros or an exponent."""
    return Decimal(f"{step.normalize():f}")


def step_choices(current: Decimal | None = None) -> list[tuple[str, list[tuple[Decimal, str]]]]:
    """Return the list in groups for a form, with the step in use where it is not on it."""
    groups = [(group, list(steps.items())) for group, steps in STEPS.items()]
    if current is not None and not any(current in steps for steps in STEPS.values()):
        groups.append(("In use", [(tidy(current), step_text(current))]))
    return groups
