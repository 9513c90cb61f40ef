"""A face back in words: what `read_face` reads as the same face."""

from fronts.notebook.face import BESIDE, OVER, WIDE, Cell, Face, Row
from fronts.rules.kinds import Unit
from fronts.rules.lengths import Mm, write


def face_words(face: Face, unit: Unit) -> str:
    """The face as a shop would say it, from the top: `drawer 6 over pair`."""
    return f" {OVER} ".join(_row(row, unit) for row in face)


def _row(row: Row, unit: Unit) -> str:
    """Its height stands at the first cell that can say it."""
    saying = next((cell for cell in row.cells if cell.takes_sizes), None)
    return f" {BESIDE} ".join(
        _cell(cell, row.height if cell is saying else None, unit) for cell in row.cells
    )


def _cell(cell: Cell, height: Mm | None, unit: Unit) -> str:
    if not cell.takes_sizes:
        return _stack(cell, unit)
    words: list[str] = [cell.closed_by, cell.hinged or ""]
    words += [write(height, unit)] if height is not None else []
    words += [f"{write(cell.width, unit)} {WIDE}"] if cell.width is not None else []
    return " ".join(word for word in words if word)


def _stack(cell: Cell, unit: Unit) -> str:
    said = f"{len(cell.heights)} {cell.closed_by}"
    if not any(cell.heights):
        return said
    heights = ["" if height is None else write(height, unit) for height in cell.heights]
    return f"{said} {', '.join(heights)}".rstrip(" ")
