"""Addresses of a job as a file, and of a copy of it."""

from django.urls import URLPattern, path

from fronts.pages.job_file import views

urlpatterns: list[URLPattern] = [
    path("jobs/<int:job_id>/file/", views.job_file, name="job-file"),
    path("jobs/<int:job_id>/copy/", views.job_copy_page, name="job-copy"),
    path("jobs/import/", views.job_import_page, name="job-import"),
]
