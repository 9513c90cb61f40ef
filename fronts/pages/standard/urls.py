"""Addresses of the shop's standard: its index, and its short pages."""

from django.urls import URLPattern, path, register_converter

from fronts.pages.standard.forms.short_pages import ShortPageConverter
from fronts.pages.standard.views import faces, index, page

register_converter(ShortPageConverter, "short_page")

_PAGE = "shop/standard/<short_page:topic>/"
urlpatterns: list[URLPattern] = [
    path("shop/standard/", index.standard_index, name="shop-standard"),
    path("shop/faces/", faces.shop_faces, name="shop-faces"),
    path("shop/faces/<int:key>/", faces.shop_face, name="shop-face"),
    path("shop/faces/<int:key>/delete/", faces.shop_face_delete, name="shop-face-delete"),
    path(_PAGE, page.short_page, name="shop-standard-page"),
    path(f"{_PAGE}drawing/", page.short_page_drawing, name="shop-standard-drawing"),
]
