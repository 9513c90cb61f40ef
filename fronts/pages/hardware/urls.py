"""Addresses of the list of hardware: the shop's, and a job's own."""

from django.urls import URLPattern, path, register_converter

from fronts.pages.hardware.views import files, items, lists, stock
from fronts.pages.hardware.views.kinds import ItemsConverter
from fronts.pages.hardware.views.place import View, of_job, of_shop

register_converter(ItemsConverter, "items")

_KIND, _ITEM = "<items:kind>/", "<items:kind>/<int:key>/"
_READ, _WRITE = ("GET", "HEAD"), ("POST",)
_PAGES: tuple[tuple[str, View, str, tuple[str, ...]], ...] = (
    ("", lists.hardware, "hardware", _READ),
    (_KIND + "new/", items.item_new, "item-new", ()),
    (_KIND + "usual/", lists.usual_begin, "items-usual", _WRITE),
    (_KIND + "file/", files.csv_in, "items-file", ()),
    (_KIND + "items.csv", files.csv_out, "items-csv", _READ),
    (_ITEM, items.item_edit, "item-edit", ()),
    (_ITEM + "move/", items.item_move_by, "item-move", _WRITE),
    (_ITEM + "delete/", items.item_delete_now, "item-delete", _WRITE),
)

urlpatterns: list[URLPattern] = [
    *(
        path(f"shop/hardware/{way}", of_shop(view, *methods), name=f"shop-{name}")
        for way, view, name, methods in _PAGES
    ),
    *(
        path(f"jobs/<int:job_id>/hardware/{way}", of_job(view, *methods), name=f"job-{name}")
        for way, view, name, methods in _PAGES
    ),
    path("shop/hardware/stock/", of_shop(stock.stock), name="shop-stock"),
    path("shop/hardware/stock/file/", of_shop(stock.stock_file), name="shop-stock-file"),
    path("shop/hardware/stock/stock.csv", of_shop(stock.stock_csv, *_READ), name="shop-stock-csv"),
    path(
        "jobs/<int:job_id>/hardware/own/", of_job(lists.list_own, *_WRITE), name="job-hardware-own"
    ),
    path(
        "jobs/<int:job_id>/hardware/clear/",
        of_job(lists.list_clear, *_WRITE),
        name="job-hardware-clear",
    ),
]
