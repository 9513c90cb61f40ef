"""What is wrong with a notebook, and in which line."""

from dataclasses import dataclass


class NotUnderstood(ValueError):  # noqa: N818 - said as the reader of a line says it
    """A line or a face can't be read whole: what was found there, and what may stand there."""

    def __init__(self, found: str, wanted: str) -> None:
        super().__init__(f"found {found}, wanted {wanted}")
        self.found, self.wanted = found, wanted


@dataclass(frozen=True, slots=True)
class LineFault:
    """A line of a notebook, counted from 1, that can't be read or can't be so."""

    line: int
    found: str
    wanted: str

    def __str__(self) -> str:
        return f"line {self.line}: found {self.found}, wanted {self.wanted}"


class NotebookRefused(ValueError):  # noqa: N818 - said as the reader of a notebook says it
    """The notebook can't be used; `faults` says everything that is wrong, line by line."""

    def __init__(self, faults: tuple[LineFault, ...]) -> None:
        super().__init__("\n".join(str(fault) for fault in faults))
        self.faults = faults
