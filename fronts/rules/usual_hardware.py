"""The plain invented items that hold for a shop that has entered none of a kind."""

from fronts.rules.items import HandleItem, Hardware
from fronts.rules.kinds import SLIDES
from fronts.rules.kitchen import Kitchen
from fronts.rules.lifts import USUAL_LIFTS
from fronts.rules.practice import inches
from fronts.rules.usual_hinges import usual_hinges
from fronts.rules.usual_slides import usual_slides

STANDS_OUT = inches(1)
"""How far a plain knob stands out (common practice, no source)."""


def usual_hardware(kitchen: Kitchen) -> Hardware:
    """Items of every kind, with the kitchen's own numbers and stock: a list to begin from."""
    knob = HandleItem("KNOB", "plain knob", thread=kitchen.stock.knob_thread, projection=STANDS_OUT)
    return Hardware(
        hinges=usual_hinges(kitchen.practice),
        slides=tuple(item for kind in SLIDES for item in usual_slides(kitchen, kind)),
        handles=(knob,),
        lifts=USUAL_LIFTS,
    )
