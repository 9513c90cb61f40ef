"""Faces as pictures, beside the words that say them."""

from functools import cache

from django import template
from django.utils.safestring import SafeString

from fronts.notebook import read_face
from fronts.pages.shared.drawn_face import drawn_face

register = template.Library()


@register.simple_tag(name="example_face")
@cache
def example_face(words: str) -> SafeString:
    """The face that the words say, in inches; drawn once."""
    return drawn_face(read_face(words, "in"), "in")
