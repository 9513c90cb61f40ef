"""Addresses of the pages where a kitchen is measured and entered."""

from django.urls import URLPattern

urlpatterns: list[URLPattern] = []
