"""Rows for tests that need some, each made by the service that people's own go through."""

from tests.factories.kitchens import (
    HINGES,
    BoxFactory,
    CabinetFactory,
    DoorOnHandFactory,
    OpeningFactory,
    ShelfPinsFactory,
    door_and_drawer,
    overlaid,
)
from tests.factories.made import NOW
from tests.factories.shops import PASSWORD, JobFactory, PersonFactory, ShopFactory

__all__ = [
    "HINGES", "NOW", "PASSWORD", "BoxFactory", "CabinetFactory", "DoorOnHandFactory", "JobFactory",
    "OpeningFactory", "PersonFactory", "ShelfPinsFactory", "ShopFactory", "door_and_drawer",
    "overlaid",
]  # fmt: skip
