"""Addresses of what is in stock of what the shop buys."""

from django.urls import URLPattern, path

from fronts.pages.shelf.views import item, lists

_ALL = "shop/stock/"
_ONE = f"{_ALL}<int:goods_id>/"
urlpatterns: list[URLPattern] = [
    path(_ALL, lists.shelf, name="shop-shelf"),
    path(f"{_ALL}count/", lists.shelf_count_new, name="shop-shelf-new"),
    path(f"{_ALL}job/<int:job_id>/used/", lists.shelf_use_all, name="shop-shelf-used"),
    path(_ONE, item.shelf_item, name="shop-shelf-item"),
    path(f"{_ONE}count/", item.shelf_count, name="shop-shelf-count"),
    path(f"{_ONE}move/", item.shelf_move, name="shop-shelf-move"),
]
