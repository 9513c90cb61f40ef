"""Edge bands in a schedule's JSON: the banded edges of a part."""

from fronts.rules.banded_edges import Banding
from fronts.rules.lengths import as_output


def banded(banding: Banding | None) -> dict[str, object]:
    """The banded edges, as the front hangs; `code` null where nobody named the band."""
    if banding is None:
        return {}
    return {
        side: {"code": band.code or None, "thickness": as_output(band.thickness)}
        for side, band, _ in banding.edges()
    }
