"""Addresses of a job's kitchen: measuring it, and the work that follows."""

from django.urls import URLPattern, URLResolver, include, path

app_name = "fronts"
urlpatterns: list[URLPattern | URLResolver] = [
    path("", include("fronts.views.measure_urls")),
    path("", include("fronts.views.work_urls")),
]
