"""The tables: what people measured and decided, one file a thing."""

from fronts.models.boxes import Box, BoxToMake, ShelfPins
from fronts.models.budgets import JobBudget
from fronts.models.cabinets import Cabinet
from fronts.models.cuts import FrontCut
from fronts.models.cutting import CutPlan, PlanState
from fronts.models.dates import CalendarFeed, ClosedDays, JobDates, ShopDates, StageMark
from fronts.models.doors import DoorOnHand, HingeBore
from fronts.models.fitting import FitRecord, WorkTick
from fronts.models.fronts import Front, HandlePlace
from fronts.models.items import (
    BandItem,
    BoxesMadeOf,
    HandleItem,
    HardwareList,
    HingeItem,
    LiftItem,
    SlideItem,
)
from fronts.models.offcuts import Offcut, OffcutGone
from fronts.models.openings import Opening
from fronts.models.order_approvals import ApprovedLine, OrderApproval
from fronts.models.order_lists import OrderList
from fronts.models.order_sendings import OrderArrival, OrderSending, SentLine
from fronts.models.orders import OrderCheck
from fronts.models.photos import SnagPhoto, WallPhoto
from fronts.models.printed_sheets import PrintedSheet
from fronts.models.receipts import FrontReceipt
from fronts.models.saved_faces import SavedFace
from fronts.models.sheet_sets import SheetFile, SheetSet
from fronts.models.shelf import StockEntry
from fronts.models.snags import Snag
from fronts.models.standard import JobStandard, KindStandard, ShopStandard
from fronts.models.stock import ShopNumber, Stock
from fronts.models.suppliers import Goods, Offer, Supplier, UsualCurrency
from fronts.models.walls import Thing, Wall

__all__ = [
    "ApprovedLine",
    "BandItem",
    "Box",
    "BoxToMake",
    "BoxesMadeOf",
    "Cabinet",
    "CalendarFeed",
    "ClosedDays",
    "CutPlan",
    "DoorOnHand",
    "FitRecord",
    "Front",
    "FrontCut",
    "FrontReceipt",
    "Goods",
    "HandleItem",
    "HandlePlace",
    "HardwareList",
    "HingeBore",
    "HingeItem",
    "JobBudget",
    "JobDates",
    "JobStandard",
    "KindStandard",
    "LiftItem",
    "Offcut",
    "OffcutGone",
    "Offer",
    "Opening",
    "OrderApproval",
    "OrderArrival",
    "OrderCheck",
    "OrderList",
    "OrderSending",
    "PlanState",
    "PrintedSheet",
    "SavedFace",
    "SentLine",
    "SheetFile",
    "SheetSet",
    "ShelfPins",
    "ShopDates",
    "ShopNumber",
    "ShopStandard",
    "SlideItem",
    "Snag",
    "SnagPhoto",
    "StageMark",
    "Stock",
    "StockEntry",
    "Supplier",
    "Thing",
    "UsualCurrency",
    "Wall",
    "WallPhoto",
    "WorkTick",
]
