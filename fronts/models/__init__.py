"""The tables: what people measured and decided, one file a thing."""

from fronts.models.boxes import Box, ShelfPins
from fronts.models.cabinets import Cabinet
from fronts.models.doors import DoorOnHand, HingeBore
from fronts.models.fitting import FitRecord
from fronts.models.openings import Opening
from fronts.models.orders import OrderCheck
from fronts.models.standard import JobStandard, ShopStandard
from fronts.models.stock import ShopNumber, Stock

__all__ = [
    "Box", "Cabinet", "DoorOnHand", "FitRecord", "HingeBore", "JobStandard", "Opening",
    "OrderCheck", "ShelfPins", "ShopNumber", "ShopStandard", "Stock",
]  # fmt: skip
