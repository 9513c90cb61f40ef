"""What is wrong in a file, said with its path; and JSON that refuses doubled keys."""

import json
from collections.abc import Iterable
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Fault:
    """One thing wrong in a file: where, what stands there, and what is wanted."""

    path: str
    found: str
    wanted: str

    def __str__(self) -> str:
        return f"{self.path}: found {self.found}, wanted {self.wanted}"


class PartsFileError(ValueError):
    """The file is refused; `faults` says why, all at once."""

    def __init__(self, faults: Iterable[Fault]) -> None:
        self.faults = tuple(faults)
        super().__init__("\n".join(str(fault) for fault in self.faults))


def parsed(data: bytes) -> object:
    """The JSON of a file; PartsFileError where it is none."""
    try:
        return json.loads(data.decode("utf-8-sig"), object_pairs_hook=_once)
    except UnicodeDecodeError:
        raise PartsFileError([Fault("(file)", "bytes that are not UTF-8", "JSON text")]) from None
    except _TwiceError as twice:
        raise PartsFileError([Fault(twice.key, "the key twice", "each key once")]) from None
    except (ValueError, RecursionError) as error:
        raise PartsFileError(
            [Fault("(file)", f"no JSON ({error})"[:200], "a parts file")]
        ) from None


class _TwiceError(Exception):
    def __init__(self, key: str) -> None:
        self.key = key


def _once(pairs: list[tuple[str, object]]) -> dict[str, object]:
    found: dict[str, object] = {}
    for key, value in pairs:
        if key in found:
            raise _TwiceError(key)
        found[key] = value
    return found


def shown(found: object) -> str:
    """A value as JSON would write it, on one line and short."""
    if isinstance(found, (dict, list)):
        return f"{'an object' if isinstance(found, dict) else 'a list'} of {len(found)}"
    return short(json.dumps(found, ensure_ascii=False))


def short(text: str) -> str:
    """One printable line, cut where it is long."""
    line = " ".join("".join(c if c.isprintable() else " " for c in text).split())
    return line if len(line) <= 60 else line[:59] + "…"
