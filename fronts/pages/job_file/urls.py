"""Addresses of a job as a file."""

from django.urls import URLPattern, path

from fronts.pages.job_file import views

urlpatterns: list[URLPattern] = [
    path("jobs/<int:job_id>/file/", views.job_file, name="job-file"),
    path("jobs/import/", views.job_import_page, name="job-import"),
]
