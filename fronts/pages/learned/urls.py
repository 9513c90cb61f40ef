"""The address of what is learned."""

from django.urls import URLPattern, path

from fronts.pages.learned import views

urlpatterns: list[URLPattern] = [
    path("shop/learned/", views.shop_learned, name="shop-learned"),
]
