"""The addresses of what there is to cut."""

from django.urls import URLPattern, path

from fronts.pages.cut.views import plan

urlpatterns: list[URLPattern] = [
    path("jobs/<int:job_id>/cut/", plan.job_cut, name="job-cut"),
    path("jobs/<int:job_id>/cut/cancel/", plan.cut_cancel, name="cut-cancel"),
]
