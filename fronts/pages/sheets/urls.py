"""Addresses of the printed sheets, one for each of the registry."""

from django.urls import URLPattern, path

from fronts.pages.sheets.views import single

_SHEETS = "jobs/<int:job_id>/sheets/"

urlpatterns: list[URLPattern] = [
    path(_SHEETS + "<slug:key>/", single.job_sheet, name="job-sheet"),
    path(_SHEETS + "fitting/<int:cabinet_id>/", single.cabinet_sheet, name="cabinet-sheet"),
]
