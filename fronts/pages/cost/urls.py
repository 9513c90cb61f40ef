"""The address of what a job costs."""

from django.urls import URLPattern, path

from fronts.pages.cost import views

urlpatterns: list[URLPattern] = [path("jobs/<int:job_id>/cost/", views.job_cost, name="job-cost")]
