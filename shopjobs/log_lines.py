"""What the log says of a request."""

import logging


class ShortOfRefusals(logging.Filter):
    """Lets a refused request take one line: a traceback is for a failure of the site's own."""

    def filter(self, record: logging.LogRecord) -> bool:
        """Drop the traceback of what was answered below 500."""
        if getattr(record, "status_code", 500) < 500:
            record.exc_info = record.exc_text = None
        return True
