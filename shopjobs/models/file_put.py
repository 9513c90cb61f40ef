"""Uploaded files on their way: in the store, and named by no row yet."""

from django.db import models


class FilePut(models.Model):
    """A file that this installation put, or is about to, until a row names it or it is removed."""

    name = models.CharField(max_length=200, unique=True)
    at = models.DateTimeField()

    def __str__(self) -> str:
        return self.name
