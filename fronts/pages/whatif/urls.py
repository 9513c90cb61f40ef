"""Addresses of what a job would be with another standard."""

from django.urls import URLPattern, path

from fronts.pages.whatif.views import suited, what_if

urlpatterns: list[URLPattern] = [
    path("jobs/<int:job_id>/what-if/", what_if.job_what_if, name="job-what-if"),
    path("jobs/<int:job_id>/what-if/doors/", suited.job_suited_standard, name="job-suited"),
]
