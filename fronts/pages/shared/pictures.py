"""Pictures as people send them, made small and plain: no place, no camera, no person in them."""

from io import BytesIO
from typing import IO

from django.core.exceptions import ValidationError
from PIL import Image, ImageOps, UnidentifiedImageError

MOST_BYTES = 20 * 1024 * 1024
MOST_PIXELS = 80_000_000
LONGEST_SIDE = 1600
"""Pixels; enough to read a tape measure on a wall."""
FORMATS = ("JPEG", "PNG", "WEBP")
_QUALITY = 80
NO_PICTURE = "This is no photo that can be read; take it as JPEG or PNG."


def small_picture(file: IO[bytes]) -> bytes:
    """The picture as a JPEG of `LONGEST_SIDE` at most, upright, with nothing but what is seen.

    ValidationError where it is none, or larger than a camera makes them.
    """
    try:
        with Image.open(file, formats=FORMATS) as picture:
            if picture.width * picture.height > MOST_PIXELS:
                raise ValidationError("This photo is too large; take it smaller.")
            picture.draft("RGB", (LONGEST_SIDE, LONGEST_SIDE))
            upright = ImageOps.exif_transpose(picture).convert("RGB")
    except (UnidentifiedImageError, OSError, ValueError, SyntaxError) as error:
        raise ValidationError(NO_PICTURE) from error
    except (Image.DecompressionBombError, Image.DecompressionBombWarning) as error:
        raise ValidationError("This photo is too large; take it smaller.") from error
    upright.thumbnail((LONGEST_SIDE, LONGEST_SIDE))
    plain = Image.new("RGB", upright.size)
    plain.paste(upright)
    small = BytesIO()
    plain.save(small, "JPEG", quality=_QUALITY, optimize=True)
    return small.getvalue()
