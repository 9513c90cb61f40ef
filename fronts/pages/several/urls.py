"""Addresses of what is done to several rows at once."""

from django.urls import URLPattern, path

from fronts.pages.several.views import several

urlpatterns: list[URLPattern] = [
    path("jobs/<int:job_id>/several/", several.job_several, name="job-several"),
]
