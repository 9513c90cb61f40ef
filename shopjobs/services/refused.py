"""What a service raises where it will not do what was asked."""


class Refused(ValueError):  # noqa: N818 - it reads as what it is: "except Refused"
    """A refusal in a person's words; `field` names the input that it is about, if any."""

    def __init__(self, message: str, *, field: str | None = None) -> None:
        super().__init__(message)
        self.message = message
        self.field = field
