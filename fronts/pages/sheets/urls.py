"""Addresses of the printed sheets: one for each of the registry, the whole set, and codes."""

from django.urls import URLPattern, path

from fronts.pages.sheets.views import codes, purchase, single, whole_set

_SHEETS = "jobs/<int:job_id>/sheets/"

urlpatterns: list[URLPattern] = [
    # Short, so that the QR code of it is coarse and easy to scan.
    path("s/", codes.sheet_codes, name="sheet-codes"),
    path("s/<str:code>/", codes.sheet_code, name="sheet-code"),
    path("shop/buy/<int:key>/purchase.pdf", purchase.purchase_sheet, name="shop-buy-sheet"),
    path(_SHEETS, whole_set.job_sheets, name="job-sheets"),
    path(_SHEETS + "set/cancel/", whole_set.sheet_set_call_off, name="sheet-set-cancel"),
    path(_SHEETS + "set/zip/", whole_set.sheet_set_zip, name="sheet-set-zip"),
    path(_SHEETS + "set/fitting/", whole_set.sheet_set_fittings, name="sheet-set-fittings"),
    path(_SHEETS + "wall/", single.wall_sheet, name="wall-sheet"),
    path(_SHEETS + "<slug:key>/", single.job_sheet, name="job-sheet"),
    path(_SHEETS + "fitting/<int:cabinet_id>/", single.cabinet_sheet, name="cabinet-sheet"),
]
