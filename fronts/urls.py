"""Addresses of a job's kitchen, page by page, and of the shop's habits."""

from django.urls import URLPattern, URLResolver, include, path

app_name = "fronts"
urlpatterns: list[URLPattern | URLResolver] = [
    path("", include("fronts.pages.measure.urls")),
    path("", include("fronts.pages.cut.urls")),
    path("", include("fronts.pages.offcuts.urls")),
    path("", include("fronts.pages.order.urls")),
    path("", include("fronts.pages.bought.urls")),
    path("", include("fronts.pages.cost.urls")),
    path("", include("fronts.pages.on_site.urls")),
    path("", include("fronts.pages.fit.urls")),
    path("", include("fronts.pages.snags.urls")),
    path("", include("fronts.pages.dates.urls")),
    path("", include("fronts.pages.sign_off.urls")),
    path("", include("fronts.pages.sheets.urls")),
    path("", include("fronts.pages.job_file.urls")),
    path("", include("fronts.pages.standard.urls")),
    path("", include("fronts.pages.hardware.urls")),
    path("", include("fronts.pages.suppliers.urls")),
    path("", include("fronts.pages.buy.urls")),
    path("", include("fronts.pages.shelf.urls")),
    path("", include("fronts.pages.learned.urls")),
    path("", include("fronts.pages.history.urls")),
    path("", include("fronts.pages.whatif.urls")),
    path("", include("fronts.pages.several.urls")),
]
