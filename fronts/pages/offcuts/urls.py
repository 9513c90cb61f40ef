"""Addresses of the shop's offcuts."""

from django.urls import URLPattern, path

from fronts.pages.offcuts.views import offcuts

_ALL = "shop/offcuts/"
urlpatterns: list[URLPattern] = [
    path(_ALL, offcuts.offcuts, name="shop-offcuts"),
    path(f"{_ALL}new/", offcuts.offcut_new, name="shop-offcut-new"),
    path(f"{_ALL}<int:key>/", offcuts.offcut_edit, name="shop-offcut"),
    path(f"{_ALL}<int:key>/away/", offcuts.offcut_away, name="shop-offcut-away"),
]
