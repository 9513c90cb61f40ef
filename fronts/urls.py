"""Addresses of a job's kitchen."""

from django.urls import URLPattern, URLResolver

app_name = "fronts"
urlpatterns: list[URLPattern | URLResolver] = []
