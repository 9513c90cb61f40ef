"""A file of offers as it is sent, and what its preview says."""

from typing import Any

from django.core.files.uploadedfile import SimpleUploadedFile
from django.test import Client

from tests.dom import Part, dom

WAY = "/shop/suppliers/file/"
TAKE = f"{WAY}take/"
HEAD = "item,supplier,supplier's code,pack,unit,price,currency,lead days,least order,preferred,note"


def sent(client: Client, data: bytes | str) -> Any:
    """Send a file to be looked through."""
    content = data.encode() if isinstance(data, str) else data
    return client.post(WAY, {"file": SimpleUploadedFile("prices", content)})


def hidden(answer: Any) -> dict[str, Any]:
    """What the preview's form sends along."""
    fields = dom(answer).one("#offers-take").all("input[type=hidden]")
    return {each.attribute("name"): each.value for each in fields}


def counts(answer: Any) -> list[str]:
    """`2 new`, `1 changed`, …."""
    return [" ".join(each.words.split()) for each in dom(answer).all(".counts li")]


def cells(table: Part) -> list[list[str]]:
    """The words of a table's cells."""
    return [
        [" ".join(cell.words.split()) for cell in row.all("th, td")]
        for row in table.all("tbody tr")
    ]
