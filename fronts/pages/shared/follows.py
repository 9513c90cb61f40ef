"""What follows from a size that was mended on site, said on the page that one comes to."""

from django.contrib import messages
from django.http import HttpRequest
from django.template.loader import render_to_string

from fronts.figures.what_follows import WhatFollows


def say_what_follows(request: HttpRequest, follows: WhatFollows) -> None:
    """The next page knows nothing of the size: what follows goes there with what was said."""
    if follows:
        words = render_to_string("fronts/shared/follows.html", {"follows": follows})
        messages.info(request, words)
