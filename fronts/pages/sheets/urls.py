"""Addresses of the printed sheets."""

from django.urls import URLPattern, path

from fronts.pages.sheets.views import cutting, kitchen

_SHEETS = "jobs/<int:job_id>/sheets/"

urlpatterns: list[URLPattern] = [
    path(_SHEETS + "schedule/", kitchen.sheet_schedule, name="sheet-schedule"),
    path(_SHEETS + "hardware/", kitchen.sheet_hardware, name="sheet-hardware"),
    path(_SHEETS + "jigs/", kitchen.sheet_jigs, name="sheet-jigs"),
    path(_SHEETS + "fitting/", kitchen.sheet_all_fittings, name="sheet-all-fittings"),
    path(_SHEETS + "fitting/<int:cabinet_id>/", kitchen.sheet_fitting, name="sheet-fitting"),
    path(_SHEETS + "labels/", cutting.sheet_labels, name="sheet-labels"),
    path(_SHEETS + "cutting/", cutting.sheet_cutting, name="sheet-cutting"),
]
