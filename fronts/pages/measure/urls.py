"""Addresses of the pages where a kitchen is measured and entered."""

from django.urls import URLPattern, path, register_converter

from fronts.pages.measure.things.registry import ThingConverter
from fronts.pages.measure.views import (
    along_wall,
    boxes,
    boxes_made_of,
    cabinets,
    cells,
    door_uses,
    doors,
    fronts,
    lines,
    new_cabinet,
    new_row,
    openings,
    page,
    preview,
    standards,
    things,
)

register_converter(ThingConverter, "things")

_JOB = "jobs/<int:job_id>/"
_CABINET = _JOB + "cabinets/<int:cabinet_id>/"
_OPENING = _JOB + "openings/<int:opening_id>/"
_FRONT = _OPENING + "fronts/<int:index>/"
_BOX = _OPENING + "boxes/<int:index>/"
_THINGS = _JOB + "<things:page>/"

urlpatterns: list[URLPattern] = [
    path(_JOB, page.job_measure, name="job-measure"),
    path(_JOB + "cells/", cells.cells_save, name="cells-save"),
    path(_JOB + "lines/", lines.lines_new, name="lines-new"),
    path(_JOB + "rows/new/", new_row.row_new, name="row-new"),
    path(_JOB + "rows/<slug:key>/move/", along_wall.row_move, name="row-move"),
    # cabinets
    path(_JOB + "cabinets/new/", new_cabinet.cabinet_new, name="cabinet-new"),
    path(_CABINET, cabinets.cabinet_edit, name="cabinet-edit"),
    path(_CABINET + "copy/", cabinets.cabinet_copy_page, name="cabinet-copy"),
    path(_CABINET + "delete/", cabinets.cabinet_delete_now, name="cabinet-delete"),
    # openings
    path(_CABINET + "openings/new/", openings.opening_new, name="opening-new"),
    path(_OPENING, openings.opening_edit, name="opening-edit"),
    path(_OPENING + "measured/", openings.opening_measured, name="opening-measured"),
    path(_OPENING + "delete/", openings.opening_delete_now, name="opening-delete"),
    # fronts and boxes
    path(_FRONT, fronts.front_edit, name="front-edit"),
    path(_BOX, boxes.box_edit, name="box-edit"),
    path(_BOX + "make/", boxes.box_make_edit, name="box-make"),
    path(_BOX + "remove/", boxes.box_remove_now, name="box-remove"),
    # things beside the cabinets: doors on hand
    path(_JOB + "doors/", doors.job_doors, name="job-doors"),
    path(_JOB + "doors/rows/", doors.doors_new, name="doors-new"),
    path(_JOB + "doors/uses/", door_uses.job_door_uses, name="job-door-uses"),
    path(_THINGS + "new/", things.thing_new, name="thing-new"),
    path(_THINGS + "<int:key>/", things.thing_edit, name="thing-edit"),
    path(_THINGS + "<int:key>/delete/", things.thing_delete_now, name="thing-delete"),
    # the house standard and the stock
    path(_JOB + "standard/", standards.job_standard, name="job-standard"),
    path(_JOB + "standard/<str:cabinet_kind>/", standards.kind_standard, name="kind-standard"),
    path(_CABINET + "standard/", standards.cabinet_standard, name="cabinet-standard"),
    path(_OPENING + "standard/", standards.opening_standard, name="opening-standard"),
    path(_JOB + "stock/", standards.job_stock, name="job-stock"),
    path(_JOB + "stock/clear/", standards.job_stock_clear, name="job-stock-clear"),
    path(_JOB + "boxes/", boxes_made_of.job_boxes, name="job-boxes"),
    path(_JOB + "boxes/clear/", boxes_made_of.job_boxes_clear, name="job-boxes-clear"),
    # what follows while somebody types
    path(_JOB + "cabinets/new/preview/", preview.cabinet_new_preview, name="cabinet-new-preview"),
    path(_CABINET + "preview/", preview.cabinet_preview, name="cabinet-preview"),
    path(
        _CABINET + "openings/new/preview/", preview.opening_new_preview, name="opening-new-preview"
    ),
    path(_OPENING + "preview/", preview.opening_preview, name="opening-preview"),
    path(_JOB + "cells/preview/", preview.face_preview, name="face-preview"),
    path(_JOB + "rows/new/preview/", preview.row_new_preview, name="row-new-preview"),
]
