"""Pictures as people send them, made small and plain: no place, no camera, no person in them."""

import struct
from io import BytesIO
from typing import IO

from django.core.exceptions import ValidationError
from PIL import Image, ImageOps

MOST_BYTES = 20 * 1024 * 1024
MOST_PIXELS = 80_000_000
MOST_UNSHRUNK = 25_000_000
"""Pixels of a picture that must be read whole before it can be made smaller: any but a JPEG."""
LONGEST_SIDE = 1600
"""Pixels; enough to read a tape measure on a wall."""
FORMATS = ("JPEG", "PNG", "WEBP")
_QUALITY = 80
TOO_LARGE = "This photo is too large; take it smaller."
_UNREADABLE = (
    OSError, ValueError, TypeError, SyntaxError, ArithmeticError, LookupError, AttributeError,
    struct.error, Warning,
)  # fmt: skip
"""What a torn or made-up file raises, in its picture or in what is said of it."""
NO_PICTURE = "This is no photo that can be read; take it as JPEG or PNG."


def small_picture(file: IO[bytes]) -> bytes:
    """The picture as a JPEG of `LONGEST_SIDE` at most, upright, with nothing but what is seen.

    ValidationError where it is none, or larger than a camera makes them.
    """
    try:
        with Image.open(file, formats=FORMATS) as picture:
            most = MOST_PIXELS if picture.format == "JPEG" else MOST_UNSHRUNK
            if picture.width * picture.height > most:
                raise ValidationError(TOO_LARGE)
            picture.draft("RGB", (LONGEST_SIDE, LONGEST_SIDE))
            picture.thumbnail((LONGEST_SIDE, LONGEST_SIDE))
            upright = ImageOps.exif_transpose(picture).convert("RGB")
    except (Image.DecompressionBombError, Image.DecompressionBombWarning) as error:
        raise ValidationError(TOO_LARGE) from error
    except _UNREADABLE as error:
        raise ValidationError(NO_PICTURE) from error
    plain = Image.new("RGB", upright.size)
    plain.paste(upright)
    small = BytesIO()
    plain.save(small, "JPEG", quality=_QUALITY, optimize=True)
    return small.getvalue()
