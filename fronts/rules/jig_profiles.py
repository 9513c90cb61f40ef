"""The ends of jigs: those that differ in nothing but their length share one.

     +-------+   block
     |       |
+----+-------+   ledge, flush behind, proud in front under the front that it carries
+------------+
"""

from collections import defaultdict
from collections.abc import Iterable

from fronts.rules.fitting_results import Jig, Ledges, Slot
from fronts.rules.lengths import Mm
from fronts.rules.template_results import JigProfile


def jig_profiles(jigs: Iterable[Jig]) -> tuple[JigProfile, ...]:
    """Each profile once, the thinnest first."""
    alike: dict[tuple[Mm, Ledges, Slot | None], list[Jig]] = defaultdict(list)
    for jig in sorted(jigs, key=lambda each: (each.thickness, each.length)):
        alike[jig.thickness, jig.ledges, jig.slot].append(jig)
    return tuple(
        JigProfile(
            thickness,
            ledges,
            slot,
            tuple(jig.length for jig in same),
            tuple(label for jig in same for label in jig.fronts),
        )
        for (thickness, ledges, slot), same in alike.items()
    )
