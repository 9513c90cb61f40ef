"""What stands for a kind of thing in the addresses of its pages."""

from fronts.rules.kitchen import BESIDE_CABINETS

_PATHS = {kind: f"{declared.one}s" for kind, declared in BESIDE_CABINETS.items()}


def path_of(kind: type) -> str:
    """The word of a kind: `doors`."""
    return _PATHS[kind]
