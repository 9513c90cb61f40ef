"""The tables: what people measured and decided, one file a thing."""

from fronts.models.boxes import Box, ShelfPins
from fronts.models.cabinets import Cabinet
from fronts.models.cutting import CutPlan, PlanState
from fronts.models.doors import DoorOnHand, HingeBore
from fronts.models.fitting import FitRecord
from fronts.models.fronts import Front
from fronts.models.openings import Opening
from fronts.models.order_lists import OrderList
from fronts.models.orders import OrderCheck
from fronts.models.sheet_sets import SheetFile, SheetSet
from fronts.models.standard import JobStandard, ShopStandard
from fronts.models.stock import ShopNumber, Stock

__all__ = [
    "Box", "Cabinet", "CutPlan", "DoorOnHand", "FitRecord", "Front", "HingeBore",
    "JobStandard",
    "Opening", "OrderCheck", "OrderList", "PlanState", "SheetFile", "SheetSet",
    "ShelfPins", "ShopNumber", "ShopStandard", "Stock",
]  # fmt: skip
