"""Addresses of what is fitted."""

from django.urls import URLPattern, path

from fronts.pages.fit import views

urlpatterns: list[URLPattern] = [
    path("jobs/<int:job_id>/fit/", views.job_fit, name="job-fit"),
    path("jobs/<int:job_id>/fit/<int:cabinet_id>/", views.job_fit_cabinet, name="job-fit-cabinet"),
]
