"""Addresses where sizes are taken on site."""

from django.urls import URLPattern, path, register_converter

from fronts.pages.on_site import views
from fronts.rules.site_sizes import NAMES


class SizeConverter:
    """A size of an opening in an address: `width-top`."""

    regex = "|".join(name.replace("_", "-") for name in NAMES)

    def to_python(self, value: str) -> str:
        """The name of the size's fact."""
        return value.replace("-", "_")

    def to_url(self, value: str) -> str:
        """Its word in an address."""
        return value.replace("_", "-")


register_converter(SizeConverter, "sizes")

_ALL = "jobs/<int:job_id>/measuring/"

urlpatterns: list[URLPattern] = [
    path("jobs/<int:job_id>/along/", views.job_along, name="job-along"),
    path("jobs/<int:job_id>/photos/", views.photo_new, name="photo-new"),
    path("jobs/<int:job_id>/photos/<int:key>/", views.photo_image, name="photo-image"),
    path("jobs/<int:job_id>/photos/<int:key>/delete/", views.photo_delete_now, name="photo-delete"),
    path(_ALL, views.job_on_site, name="job-on-site"),
    path(_ALL + "<int:opening_id>/<sizes:size>/", views.on_site_size, name="on-site-size"),
]
