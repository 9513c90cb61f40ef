"""What is wrong with a job file, and where."""

from dataclasses import dataclass

MOST_FAULTS = 1000
"""More than this and the file is something else; the rest are only counted."""


@dataclass(frozen=True, slots=True)
class Fault:
    """One thing that is wrong: the key's path, what was found there, what is wanted."""

    path: str
    found: str
    wanted: str

    def __str__(self) -> str:
        return f"{self.path}: found {self.found}, wanted {self.wanted}"


class Refused(ValueError):  # noqa: N818 - said as the reader of a file says it
    """The file can't be used; `faults` says everything that is wrong with it."""

    def __init__(self, faults: tuple[Fault, ...]) -> None:
        super().__init__("\n".join(str(each) for each in faults))
        self.faults = faults


class Faults:
    """Faults gathered while a file is read, in the order of the file."""

    def __init__(self) -> None:
        self._found: list[Fault] = []
        self._further = 0

    @property
    def any(self) -> bool:
        """Whether there is one so far."""
        return bool(self._found)

    def add(self, path: str, found: str, wanted: str) -> None:
        if len(self._found) < MOST_FAULTS:
            self._found.append(Fault(path, found, wanted))
        else:
            self._further += 1

    def refuse_if_any(self) -> None:
        """Raise `Refused` with all of them, if there is one."""
        if not self._found:
            return
        if self._further:
            self._found.append(Fault("file", f"{self._further:,} faults more", "none"))
        raise Refused(tuple(self._found))


def refused(path: str, found: str, wanted: str) -> Refused:
    """A refusal for a single fault that leaves nothing to read on with."""
    return Refused((Fault(path, found, wanted),))
