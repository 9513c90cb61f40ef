"""Addresses of the pages that follow from a kitchen: cut, order, fit, sheets."""

from django.urls import URLPattern, path

from fronts.views import cut, fit, order, sheets, sheets_cutting

urlpatterns: list[URLPattern] = [
    path("jobs/<int:job_id>/cut/", cut.job_cut, name="job-cut"),
    path("jobs/<int:job_id>/order/", order.job_order, name="job-order"),
    path("jobs/<int:job_id>/order.csv", order.job_order_csv, name="job-order-csv"),
    path("jobs/<int:job_id>/fit/", fit.job_fit, name="job-fit"),
    path("jobs/<int:job_id>/fit/<int:cabinet_id>/", fit.job_fit_cabinet, name="job-fit-cabinet"),
    # printed sheets
    path("jobs/<int:job_id>/sheets/schedule/", sheets.sheet_schedule, name="sheet-schedule"),
    path("jobs/<int:job_id>/sheets/hardware/", sheets.sheet_hardware, name="sheet-hardware"),
    path("jobs/<int:job_id>/sheets/jigs/", sheets.sheet_jigs, name="sheet-jigs"),
    path("jobs/<int:job_id>/sheets/fitting/", sheets.sheet_all_fittings, name="sheet-all-fittings"),
    path(
        "jobs/<int:job_id>/sheets/fitting/<int:cabinet_id>/",
        sheets.sheet_fitting,
        name="sheet-fitting",
    ),
    path("jobs/<int:job_id>/sheets/labels/", sheets_cutting.sheet_labels, name="sheet-labels"),
    path("jobs/<int:job_id>/sheets/cutting/", sheets_cutting.sheet_cutting, name="sheet-cutting"),
]
