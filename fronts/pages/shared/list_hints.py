"""How lists of lengths are typed, each with lengths of its own kind."""

from collections.abc import Mapping

_EXAMPLES: Mapping[str, Mapping[str, str]] = {
    "screw_lengths": {"in": "3/4, 1, 1 1/4", "mm": "20, 25, 32"},
    "knob_screw_lengths": {"in": "1, 1 1/8, 1 1/2", "mm": "25, 30, 40"},
    "slide_lengths": {"in": "16, 18, 20", "mm": "400, 450, 500"},
    "lengths": {"in": "16, 18, 20", "mm": "400, 450, 500"},
    "heights": {"in": "3, 4, 6", "mm": "80, 120, 160"},
    "plates": {"in": "0, 2 mm, 4 mm", "mm": "0, 2, 4"},
    "overlays": {"in": "3/8, 1/2", "mm": "10, 12.5"},
    "gaps": {"in": "3/32, 1/8", "mm": "2, 3"},
}


def list_hint(name: str, unit: str) -> str:
    """How the lengths of this column are typed."""
    return f"With commas between them, like {_EXAMPLES[name][unit]}."
