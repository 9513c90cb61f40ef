"""The address of the shop's habits."""

from django.urls import URLPattern, path

from fronts.pages.standard import views

urlpatterns: list[URLPattern] = [
    path("shop/standard/", views.shop_standard, name="shop-standard"),
]
