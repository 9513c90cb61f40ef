"""The addresses of what there is to cut."""

from django.urls import URLPattern, path

from fronts.pages.cut import views

urlpatterns: list[URLPattern] = [
    path("jobs/<int:job_id>/cut/", views.job_cut, name="job-cut"),
    path("jobs/<int:job_id>/cut/cancel/", views.cut_cancel, name="cut-cancel"),
]
