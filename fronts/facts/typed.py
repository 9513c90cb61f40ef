"""Django's fields in a form that lets a subclass say what it holds to the type checker."""

from typing import TYPE_CHECKING, TypeVar

from django.db import models

ST = TypeVar("ST", contravariant=True)
GT = TypeVar("GT", covariant=True)
if TYPE_CHECKING:
    # To the type checker these are plain fields, so that each may say what it holds.
    class DecimalFieldOf(models.Field[ST, GT]):
        max_digits: int
        decimal_places: int

    class TextFieldOf(models.Field[ST, GT]): ...

    class CharFieldOf(models.Field[ST, GT]): ...
else:

    class OfTypes:
        def __class_getitem__(cls, types):
            return cls

    class DecimalFieldOf(OfTypes, models.DecimalField): ...

    class TextFieldOf(OfTypes, models.TextField): ...

    class CharFieldOf(OfTypes, models.CharField): ...
