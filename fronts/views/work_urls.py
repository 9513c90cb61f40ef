"""Addresses of the pages that follow from a kitchen: cut, order, fit, sheets."""

from django.urls import URLPattern

urlpatterns: list[URLPattern] = []
