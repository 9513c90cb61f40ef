"""Addresses of the door maker's list."""

from django.urls import URLPattern, path

from fronts.pages.bought import views

urlpatterns: list[URLPattern] = [
    path("jobs/<int:job_id>/bought/", views.job_bought, name="job-bought"),
    path("jobs/<int:job_id>/bought.csv", views.job_bought_csv, name="job-bought-csv"),
    path("jobs/<int:job_id>/bought.xlsx", views.job_bought_xlsx, name="job-bought-xlsx"),
]
