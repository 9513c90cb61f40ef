"""How wide a text will be, near enough to keep texts apart.

Widths are thousandths of the text size, rounded up from DejaVu Sans Condensed, which is
wider than the usual screen fonts.
"""

from functools import lru_cache

from fronts.drawings.svg import Px

_THIN = frozenset(" .,:;|'/ijlIJ")
_NARROW = frozenset('!()[]\\-tfr"')
_WIDE = frozenset("WMmw%@&×≈+=<>~#_–—…⌀OQGDNHU")
_OTHER, _FAR = 1000, 1400


@lru_cache(maxsize=4096)
def text_width(text: str, size: Px, *, bold: bool = False) -> Px:
    """The most that `text` takes across at `size`."""
    thousandths = sum(_sign(each) for each in text)
    return thousandths * size * (112 if bold else 100) // 100_000


def line_height(size: Px) -> Px:
    """What a line of text takes, from the foot of one to the foot of the next."""
    return size * 120 // 100


def shortened(text: str, size: Px, room: Px, *, bold: bool = False) -> str:
    """`text`, or its beginning and `…`, in no more than `room`; nothing where not even that."""
    if text_width(text, size, bold=bold) <= room:
        return text
    for end in range(len(text) - 1, 0, -1):
        tried = text[:end].rstrip() + "…"
        if text_width(tried, size, bold=bold) <= room:
            return tried
    return ""


def _sign(sign: str) -> int:
    if sign.isdigit() and sign.isascii():
        return 580
    if sign in _THIN:
        return 340
    if sign in _NARROW:
        return 420
    if sign in _WIDE:
        return 920
    if sign.isascii():
        return 700 if sign.isupper() else 600
    return _FAR if ord(sign) >= 0x2E80 else _OTHER
