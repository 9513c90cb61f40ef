"""The plain invented items that hold for a shop that has entered none of a kind."""

from fronts.rules.banded_edges import USUAL_BANDS
from fronts.rules.items import HandleItem, Hardware
from fronts.rules.kinds import SLIDES
from fronts.rules.kitchen import Kitchen
from fronts.rules.lifts import USUAL_LIFTS
from fronts.rules.usual_hinges import usual_hinges
from fronts.rules.usual_slides import usual_slides


def usual_hardware(kitchen: Kitchen) -> Hardware:
    """Items of every kind, with the kitchen's own numbers and stock: a list to begin from."""
    practice = kitchen.practice
    knob = HandleItem(
        "KNOB", "plain knob", thread=kitchen.stock.knob_thread,
        projection=practice.handle_projection,
    )  # fmt: skip
    return Hardware(
        hinges=usual_hinges(practice),
        slides=tuple(item for kind in SLIDES for item in usual_slides(kitchen, kind)),
        handles=(knob,),
        lifts=USUAL_LIFTS,
        bands=USUAL_BANDS,
    )
