"""Addresses of a job's snags."""

from django.urls import URLPattern, path

from fronts.pages.snags.views import lists, one, photos

_ALL = "jobs/<int:job_id>/snags/"
_ONE = _ALL + "<int:snag_id>/"
_PHOTO = _ONE + "photos/<int:key>/"

urlpatterns: list[URLPattern] = [
    path(_ALL, lists.job_snags, name="job-snags"),
    path(_ONE, one.snag_page, name="snag"),
    path(_ONE + "done/", one.snag_settle_now, name="snag-settle"),
    path(_ONE + "open/", one.snag_open_now, name="snag-open"),
    path(_ONE + "delete/", one.snag_delete_now, name="snag-delete"),
    path(_ONE + "photos/", photos.snag_photo_new, name="snag-photo-new"),
    path(_PHOTO, photos.snag_photo_image, name="snag-photo-image"),
    path(_PHOTO + "delete/", photos.snag_photo_delete_now, name="snag-photo-delete"),
]
