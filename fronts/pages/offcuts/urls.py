"""Addresses of the shop's offcuts, and of doors that no front is made of."""

from django.urls import URLPattern, path

from fronts.pages.offcuts.views import doors, offcuts

_ALL = "shop/offcuts/"
urlpatterns: list[URLPattern] = [
    path(_ALL, offcuts.offcuts, name="shop-offcuts"),
    path(f"{_ALL}doors/", doors.doors, name="shop-doors"),
    path(f"{_ALL}doors/<int:key>/", doors.door_move_to, name="shop-door"),
    path(f"{_ALL}new/", offcuts.offcut_new, name="shop-offcut-new"),
    path(f"{_ALL}<int:key>/", offcuts.offcut_edit, name="shop-offcut"),
    path(f"{_ALL}<int:key>/away/", offcuts.offcut_away, name="shop-offcut-away"),
]
