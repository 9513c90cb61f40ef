"""Addresses of the hardware order."""

from django.urls import URLPattern, path

from fronts.pages.order import views

urlpatterns: list[URLPattern] = [
    path("jobs/<int:job_id>/order/", views.job_order, name="job-order"),
    path("jobs/<int:job_id>/order.csv", views.job_order_csv, name="job-order-csv"),
]
