"""Uploaded files in a shop's file: what is in them stands in their row, beside their names.

They keep their names, since history names them too.
"""

import re
from base64 import b64decode, b64encode
from typing import Any

from django.core.files.base import ContentFile
from django.db.models import FileField
from django.db.models.fields.files import FieldFile

from shopjobs.services.refused import Refused

_NAME = re.compile(r"[a-z]+(/[0-9]+)*/[0-9a-f]{16,64}\.[a-z]+")


def file_value(file: FieldFile) -> Any:
    """The name of a file and what is in it; nothing where there is none any more."""
    if not file:
        return None
    try:
        with file.open() as opened:
            content = b64encode(opened.read()).decode("ascii")
    except OSError:
        return None
    return {"name": file.name, "content": content}


def file_here(field: FileField, value: Any, where: str) -> str:
    """The name of the file, which is put where this installation keeps such; "" for none.

    One of that name that is here already must be the same: nobody gets another's.
    """
    if value is None:
        return ""
    try:
        name, content = str(value["name"]), b64decode(value["content"], validate=True)
    except (TypeError, KeyError, ValueError) as error:
        raise Refused(f"{where}, {field.name}: this value can't be read") from error
    if not _NAME.fullmatch(name):
        raise Refused(f"{where}, {field.name}: this is no name of an uploaded file")
    if not field.storage.exists(name):
        field.storage.save(name, ContentFile(content))
        return name
    with field.storage.open(name) as there:
        if there.read() != content:
            raise Refused(f"{where}, {field.name}: another file has this name here")
    return name
