"""What a printed schedule says of parts to cut, and of fronts whose grain runs on."""

from typing import TypeAlias

from fronts.jobfile.bands_json import banded
from fronts.rules.lengths import as_output
from fronts.rules.results import Part, Schedule

Json: TypeAlias = dict[str, object]
_SIZES = ("length", "width", "thickness", "finished_length", "finished_width")


def part_json(part: Part) -> Json:
    """A part; with the set in which its grain runs on, and its front's number there."""
    return {
        "label": part.label,
        "front": part.front,
        "part": part.part,
        **{name: as_output(getattr(part, name)) for name in _SIZES},
        "banded": banded(part.banding),
        "material": part.material,
        "count": part.count,
        "stack": part.stack,
        "grain_set": part.grain and part.grain.name,
        "grain_number": part.grain and part.grain.number,
    }


def grain_sets_json(schedule: Schedule) -> list[Json]:
    """Each set, its fronts in order."""
    return [
        {"name": one.name, "grain": one.way, "fronts": list(one.fronts)}
        for one in schedule.grain_sets
    ]
