"""The log as the site writes it in JSON, read back."""

import io
import json
import logging
from typing import Any

from shopjobs.log_lines import JsonLine, ShortOfRefusals


class JsonLog(logging.StreamHandler[io.StringIO]):
    """Takes the lines that the console would get."""

    def __init__(self) -> None:
        super().__init__(io.StringIO())
        self.setFormatter(JsonLine())
        self.addFilter(ShortOfRefusals())

    @property
    def text(self) -> str:
        """All that was written."""
        return self.stream.getvalue()

    @property
    def lines(self) -> list[dict[str, Any]]:
        """Each line, read."""
        return [json.loads(line) for line in self.text.splitlines()]

    def of(self, logger: str) -> list[dict[str, Any]]:
        """The lines of one logger."""
        return [line for line in self.lines if line["logger"] == logger]
