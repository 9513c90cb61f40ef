"""The shop's hardware, item by item, and how it makes its boxes; a job's own replaces it whole."""

from django.db import models
from django.db.models import Q

from fronts.facts import columns
from fronts.models.kept import Kept, table_of
from fronts.models.owned import OfShopOrJob
from fronts.rules.box_facts import BoxesMadeOf as BoxFacts
from fronts.rules.items import BandItem as BandFacts
from fronts.rules.items import HandleItem as HandleFacts
from fronts.rules.items import HingeItem as HingeFacts
from fronts.rules.items import LiftItem as LiftFacts
from fronts.rules.items import SlideItem as SlideFacts


class HardwareList(OfShopOrJob):
    """A list of hardware, whose items hang on it."""

    class Meta:
        constraints = [
            models.UniqueConstraint(
                fields=["shop"], condition=Q(job=None), name="one_hardware_list_for_the_shop"
            ),
        ]

    def __str__(self) -> str:
        return f"Hardware of {self.job or self.shop}"


class BoxesMadeOf(OfShopOrJob):
    """How boxes are made."""

    side = columns.maybe_size(BoxFacts, "side")
    bottom = columns.maybe_size(BoxFacts, "bottom")
    groove = columns.maybe_size(BoxFacts, "groove")
    joint = columns.word(BoxFacts, "joint")
    joint_depth = columns.maybe_size(BoxFacts, "joint_depth")
    heights = columns.sizes(BoxFacts, "heights")
    material = columns.words(BoxFacts, "material")

    class Meta:
        constraints = [
            models.UniqueConstraint(
                fields=["shop"], condition=Q(job=None), name="one_way_of_boxes_for_the_shop"
            ),
        ]

    def __str__(self) -> str:
        return f"Boxes of {self.job or self.shop}"


class Item(Kept):
    """An item of a list, by its code: every kind declares that alike."""

    owner = "hardware"

    hardware = models.ForeignKey(HardwareList, on_delete=models.CASCADE, related_name="+")
    position = models.PositiveIntegerField(default=0)
    code = columns.words(HingeFacts, "code")

    class Meta:
        abstract = True

    def __str__(self) -> str:
        return str(self.code)


class HingeItem(Item):
    """A hinge."""

    facts = HingeFacts

    mount = columns.word(HingeFacts, "mount")
    name = columns.words(HingeFacts, "name")
    frame = columns.word(HingeFacts, "frame")
    overlays = columns.sizes(HingeFacts, "overlays")
    overlay_least = columns.maybe_size(HingeFacts, "overlay_span.least")
    overlay_most = columns.maybe_size(HingeFacts, "overlay_span.most")
    gaps = columns.sizes(HingeFacts, "gaps")
    gap_least = columns.maybe_size(HingeFacts, "gap_span.least")
    gap_most = columns.maybe_size(HingeFacts, "gap_span.most")
    fixed_distance = columns.maybe_size(HingeFacts, "fixed_distance")
    plates = columns.sizes(HingeFacts, "plates")
    bore_least = columns.maybe_size(HingeFacts, "bore.least")
    bore_most = columns.maybe_size(HingeFacts, "bore.most")
    usual_bore = columns.maybe_size(HingeFacts, "usual_bore")
    cup_diameter = columns.size(HingeFacts, "cup_diameter")
    cup_depth = columns.size(HingeFacts, "cup_depth")
    angle = columns.number(HingeFacts, "angle")
    adjust_side = columns.maybe_size(HingeFacts, "adjust.side")
    adjust_height = columns.maybe_size(HingeFacts, "adjust.height")
    adjust_depth = columns.maybe_size(HingeFacts, "adjust.depth")
    turn = columns.maybe_size(HingeFacts, "turn")
    screws = columns.count(HingeFacts, "screws")
    most_door_thickness = columns.maybe_size(HingeFacts, "most_door_thickness")

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["hardware", "code"], name="hinge_code_in_list"),
        ]


class SlideItem(Item):
    """A slide, or a pair of them."""

    facts = SlideFacts

    kind = columns.word(SlideFacts, "kind")
    lengths = columns.sizes(SlideFacts, "lengths")
    load_kg = columns.number(SlideFacts, "load_kg")
    name = columns.words(SlideFacts, "name")
    clearance = columns.maybe_size(SlideFacts, "clearance")
    inside_clearance = columns.maybe_size(SlideFacts, "inside_clearance")
    tolerance = columns.maybe_size(SlideFacts, "tolerance")
    below = columns.maybe_size(SlideFacts, "below")
    above = columns.maybe_size(SlideFacts, "above")
    width = columns.maybe_size(SlideFacts, "width")
    height = columns.maybe_size(SlideFacts, "height")
    recess = columns.maybe_size(SlideFacts, "recess")
    most_side = columns.maybe_size(SlideFacts, "most_side")

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["hardware", "code"], name="slide_code_in_list"),
        ]


class HandleItem(Item):
    """A knob or pull."""

    facts = HandleFacts

    name = columns.words(HandleFacts, "name")
    centres = columns.maybe_size(HandleFacts, "centres")
    thread = columns.words(HandleFacts, "thread")
    projection = columns.maybe_size(HandleFacts, "projection")
    door = columns.word(HandleFacts, "door")
    drawer = columns.word(HandleFacts, "drawer")

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["hardware", "code"], name="handle_code_in_list"),
        ]


class LiftItem(Item):
    """A stay or lift."""

    facts = LiftFacts

    least = columns.number(LiftFacts, "least")
    most = columns.number(LiftFacts, "most")
    name = columns.words(LiftFacts, "name")
    rise = columns.number(LiftFacts, "rise")

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["hardware", "code"], name="lift_code_in_list"),
        ]


class BandItem(Item):
    """A band for the edges of fronts."""

    facts = BandFacts

    thickness = columns.size(BandFacts, "thickness")
    name = columns.words(BandFacts, "name")
    width = columns.maybe_size(BandFacts, "width")

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["hardware", "code"], name="band_code_in_list"),
        ]


def item_table(kind: type) -> type[Item]:
    """The table that keeps items of this kind."""
    table = table_of(kind)
    if not issubclass(table, Item):
        raise TypeError(f"{kind.__name__} is no item of hardware")
    return table
