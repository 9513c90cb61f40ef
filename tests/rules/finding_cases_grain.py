"""Cases of findings about fronts whose grain should run on."""

from typing import Any

from fronts.rules.kitchen import FrontFacts, Kitchen
from tests.rules.finding_cases import Case
from tests.rules.small_kitchens import beside, cabinet, inch, kitchen, opening

SAID: dict[str, Any] = {"material": "oak plywood", "grain_set": "Run"}
PAIR = ("B1.a", "B2.a")


def _doors(first: dict[str, Any], other: dict[str, Any], width: str = "15") -> Kitchen:
    """Two doors beside one another, with what is said of each beside its material and set."""
    holes = [opening(front=FrontFacts(**SAID | says), width=inch(width)) for says in (first, other)]
    left = cabinet(holes[0], width=inch(width) + inch("3"))
    return kitchen(left, beside(left, openings=(holes[1],)))


def _both(width: str = "15", **says: Any) -> Kitchen:
    return _doors(says, says, width)


def _other(**says: Any) -> Kitchen:
    return _doors({}, says)


CASES = [
    Case("named alone", "grain-set-of-one", "note", ("B1.a",), _other(grain_set=None), _both()),
    Case("named otherwise", "grain-set-of-one", "note", ("B2.a",), _other(grain_set="Rum"),
         _both()),
    Case("one's grain is said to lie across", "grain-across-its-set", "check", ("B2.a",),
         _doors({"grain": "upright"}, {"grain": "level"}), _other(grain="level")),
    Case("one exists already", "grain-set-front-not-cut", "check", ("B2.a",),
         _other(width=inch("16"), height=inch("28 1/2")), _both()),
    Case("one is glass", "grain-set-front-not-cut", "check", ("B2.a",),
         _doors({"build": "five-piece"}, {"build": "five-piece", "glass": True}),
         _both(build="five-piece")),
    Case("painted", "grain-set-without-grain", "check", PAIR, _both(material="MDF"), _both()),
    Case("of two woods", "grain-set-of-several-stocks", "check", PAIR,
         _other(material="birch plywood"), _both(material="birch plywood")),
    Case("one is thicker", "grain-set-of-several-stocks", "check", PAIR,
         _other(thickness=inch("1")), _both(thickness=inch("1"))),
    # 48 in less 1/4 in a side is 47 1/2; two doors and the kerf of 1/8 in come to 1/8 in more.
    Case("wider than a sheet", "grain-set-parted", "note", PAIR, _both("22 3/4"),
         _both("22 11/16")),
]  # fmt: skip
