"""Addresses of what is fitted."""

from django.urls import URLPattern, path

from fronts.pages.fit.views import cabinet, job, ticks

urlpatterns: list[URLPattern] = [
    path("jobs/<int:job_id>/fit/", job.job_fit, name="job-fit"),
    path(
        "jobs/<int:job_id>/fit/<int:cabinet_id>/", cabinet.job_fit_cabinet, name="job-fit-cabinet"
    ),
    path("jobs/<int:job_id>/fit/<int:cabinet_id>/work/", ticks.job_fit_tick, name="job-fit-tick"),
]
