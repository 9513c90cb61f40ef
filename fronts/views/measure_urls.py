"""Addresses of the pages where a kitchen is measured and entered."""

from django.urls import URLPattern, path

from fronts.views import (
    measure,
    measure_boxes,
    measure_cabinets,
    measure_doors,
    measure_files,
    measure_openings,
    measure_preview,
    measure_standards,
    shop_standard,
)

_JOB = "jobs/<int:job_id>/"
_CABINET = _JOB + "cabinets/<int:cabinet_id>/"
_OPENING = _JOB + "openings/<int:opening_id>/"
_BOX = _OPENING + "boxes/<int:index>/"
_DOOR = _JOB + "doors/<int:door_id>/"

urlpatterns: list[URLPattern] = [
    path(_JOB, measure.job_measure, name="job-measure"),
    path(_JOB + "file/", measure_files.job_file, name="job-file"),
    path("jobs/import/", measure_files.job_import_page, name="job-import"),
    path("shop/standard/", shop_standard.shop_standard, name="shop-standard"),
    # cabinets
    path(_JOB + "cabinets/new/", measure_cabinets.cabinet_new, name="cabinet-new"),
    path(_CABINET, measure_cabinets.cabinet_edit, name="cabinet-edit"),
    path(_CABINET + "copy/", measure_cabinets.cabinet_copy_page, name="cabinet-copy"),
    path(_CABINET + "move/", measure_cabinets.cabinet_move_by, name="cabinet-move"),
    path(_CABINET + "delete/", measure_cabinets.cabinet_delete_page, name="cabinet-delete"),
    # openings
    path(_CABINET + "openings/new/", measure_openings.opening_new, name="opening-new"),
    path(_OPENING, measure_openings.opening_edit, name="opening-edit"),
    path(_OPENING + "measured/", measure_openings.opening_measured, name="opening-measured"),
    path(_OPENING + "delete/", measure_openings.opening_delete_page, name="opening-delete"),
    # boxes
    path(_BOX, measure_boxes.box_edit, name="box-edit"),
    path(_BOX + "remove/", measure_boxes.box_remove_page, name="box-remove"),
    # doors on hand
    path(_JOB + "doors/new/", measure_doors.door_new, name="door-new"),
    path(_DOOR, measure_doors.door_edit, name="door-edit"),
    path(_DOOR + "delete/", measure_doors.door_delete_page, name="door-delete"),
    # the house standard and the stock
    path(_JOB + "standard/", measure_standards.job_standard, name="job-standard"),
    path(_CABINET + "standard/", measure_standards.cabinet_standard, name="cabinet-standard"),
    path(_OPENING + "standard/", measure_standards.opening_standard, name="opening-standard"),
    path(_JOB + "stock/", measure_standards.job_stock, name="job-stock"),
    path(_JOB + "stock/clear/", measure_standards.job_stock_clear, name="job-stock-clear"),
    # what follows while somebody types
    path(
        _JOB + "cabinets/new/preview/",
        measure_preview.cabinet_new_preview,
        name="cabinet-new-preview",
    ),
    path(_CABINET + "preview/", measure_preview.cabinet_preview, name="cabinet-preview"),
    path(
        _CABINET + "openings/new/preview/",
        measure_preview.opening_new_preview,
        name="opening-new-preview",
    ),
    path(_OPENING + "preview/", measure_preview.opening_preview, name="opening-preview"),
]
