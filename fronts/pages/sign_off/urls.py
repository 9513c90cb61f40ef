"""The address of the sign-off."""

from django.urls import URLPattern, path

from fronts.pages.sign_off import views

urlpatterns: list[URLPattern] = [
    path("jobs/<int:job_id>/sign-off/", views.job_sign_off, name="job-sign-off"),
]
