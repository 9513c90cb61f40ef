"""Addresses of suppliers, of what they ask, and of the files that say it."""

from django.urls import URLPattern, path

from fronts.pages.suppliers.views import files, lists, offers, suppliers

_ALL, _OFFERS = "shop/suppliers/", "shop/suppliers/offers/"
urlpatterns: list[URLPattern] = [
    path(_ALL, lists.suppliers, name="shop-suppliers"),
    path(f"{_ALL}new/", suppliers.supplier_new, name="shop-supplier-new"),
    path(f"{_ALL}<int:key>/", suppliers.supplier_edit, name="shop-supplier"),
    path(f"{_ALL}<int:key>/delete/", suppliers.supplier_delete_now, name="shop-supplier-delete"),
    path(f"{_OFFERS}new/", offers.offer_new, name="shop-offer-new"),
    path(f"{_OFFERS}<int:key>/", offers.offer_edit, name="shop-offer"),
    path(f"{_OFFERS}<int:key>/prefer/", offers.offer_prefer_now, name="shop-offer-prefer"),
    path(f"{_OFFERS}<int:key>/delete/", offers.offer_delete_now, name="shop-offer-delete"),
    path(f"{_ALL}prices.csv", lists.offers_csv_out, name="shop-offers-csv"),
    path(f"{_ALL}prices.xlsx", lists.offers_xlsx_out, name="shop-offers-xlsx"),
    path(f"{_ALL}file/", files.offers_file, name="shop-offers-file"),
    path(f"{_ALL}file/take/", files.offers_take_now, name="shop-offers-take"),
]
