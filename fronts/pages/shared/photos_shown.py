"""Photos as pages show them, and hand them out: to their shop alone."""

from dataclasses import dataclass
from datetime import datetime

from django.db.models.fields.files import FieldFile
from django.http import Http404, HttpResponse
from django.urls import reverse

from fronts.models import SnagPhoto, WallPhoto


@dataclass(frozen=True, slots=True)
class PhotoShown:
    """One photo: what of, where it is, where it is taken away; who took it and when."""

    of: str
    src: str
    delete: str
    taken_by: str
    taken_at: datetime


def photo_shown(photo: WallPhoto | SnagPhoto, name: str, *args: int) -> PhotoShown:
    """A photo with its addresses, called `<name>-image` and `<name>-delete`."""
    return PhotoShown(
        of=photo.of,
        src=reverse(f"fronts:{name}-image", args=args),
        delete=reverse(f"fronts:{name}-delete", args=args),
        taken_by=photo.taken_by.shown_name if photo.taken_by else "",
        taken_at=photo.taken_at,
    )


def photo_answer(image: FieldFile) -> HttpResponse:
    """The photo itself, wherever its file lies; 404 where that is gone or can't be read.

    It goes through the site, never by a link to where it lies: who may see it is asked each time.
    """
    try:
        with image.open() as file:
            content = file.read()
    except (FileNotFoundError, PermissionError, ValueError) as error:
        raise Http404 from error
    return HttpResponse(content, content_type="image/jpeg")
