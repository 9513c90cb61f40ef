"""Addresses of what is bought, and of the files for a supplier; the sheet is with the sheets."""

from django.urls import URLPattern, path

from fronts.pages.buy import views

_BUY = "shop/buy/"
urlpatterns: list[URLPattern] = [
    path(_BUY, views.buy, name="shop-buy"),
    path(f"{_BUY}lay-by/", views.buy_lay_by, name="shop-buy-lay-by"),
    path(f"{_BUY}<int:key>/purchase.csv", views.buy_csv, name="shop-buy-csv"),
    path(f"{_BUY}<int:key>/purchase.xlsx", views.buy_xlsx, name="shop-buy-xlsx"),
]
