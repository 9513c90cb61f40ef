"""Rows for what a kitchen states, not yet kept: the way back from the snapshot."""

from collections.abc import Mapping

from fronts import models
from fronts.rules.kitchen import (
    CHOOSE,
    Box,
    Cabinet,
    DoorOnHand,
    Opening,
    Stock,
)
from fronts.snapshot.standards import columns_of


def cabinet_row(cabinet: Cabinet, position: int) -> models.Cabinet:
    """A row for the cabinet, without its job."""
    return models.Cabinet(
        position=position,
        label=cabinet.label,
        kind=cabinet.kind,
        build=cabinet.build,
        wall=cabinet.wall,
        x=cabinet.x,
        y=cabinet.y,
        width=cabinet.width,
        height=cabinet.height,
        depth=cabinet.depth,
        **columns_of(cabinet.standard),
    )


def opening_row(
    opening: Opening, position: int, doors: Mapping[str, models.DoorOnHand]
) -> models.Opening:
    """A row for the opening, without its cabinet; KeyError where its door is not on hand."""
    front, measured = opening.front, opening.measured
    choose = front.door_on_hand == CHOOSE
    named = None if front.door_on_hand is None or choose else doors[front.door_on_hand]
    return models.Opening(
        position=position,
        label=opening.label,
        x=opening.x,
        y=opening.y,
        width=opening.width,
        height=opening.height,
        closed_by=opening.closed_by,
        hinged=opening.hinged or "",
        count=opening.count,
        heights=opening.heights,
        measured_width_top=measured.width_top,
        measured_width_bottom=measured.width_bottom,
        measured_height_left=measured.height_left,
        measured_height_right=measured.height_right,
        diagonal_1=measured.diagonal_1,
        diagonal_2=measured.diagonal_2,
        front_door=named,
        front_choose=choose,
        front_width=front.width,
        front_height=front.height,
        front_thickness_own=front.thickness,
        front_build=front.build or "",
        front_material=front.material or "",
        shift_x=front.shift_x,
        shift_y=front.shift_y,
        **columns_of(opening.standard),
    )


def box_row(box: Box, index: int) -> models.Box:
    """A row for the box, without its opening."""
    return models.Box(
        index=index,
        width=box.width,
        height=box.height,
        depth=box.depth,
        front_thickness=box.front_thickness,
        rise=box.rise,
        side_clearance=box.side_clearance,
        slide=box.slide or "",
        slide_width=box.slide_width,
        slide_height=box.slide_height,
    )


def door_row(door: DoorOnHand, position: int) -> models.DoorOnHand:
    """A row for the door, without its job."""
    knob = door.knob_hole
    return models.DoorOnHand(
        position=position,
        label=door.label,
        width=door.width,
        height=door.height,
        thickness=door.thickness,
        build=door.build,
        stile=door.stile,
        rail=door.rail,
        panel_thickness=door.panel_thickness,
        knob_x=None if knob is None else knob.x,
        knob_y=None if knob is None else knob.y,
        knob_diameter=None if knob is None else knob.diameter,
        bore_diameter=door.bore_diameter,
        material=door.material or "",
    )


def stock_row(stock: Stock) -> models.Stock:
    """A row for the stock, without its shop and job."""
    return models.Stock(
        screw_lengths=stock.screw_lengths,
        knob_screw_lengths=stock.knob_screw_lengths,
        slide_lengths=stock.slide_lengths,
        knob_thread=stock.knob_thread,
        knob_thread_depth=stock.knob_thread_depth,
    )
