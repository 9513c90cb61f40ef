"""What a door hangs on: frozen results, all lengths exact millimetres."""

from dataclasses import dataclass

from fronts.rules.lengths import Mm, show


@dataclass(frozen=True, slots=True)
class DoorHinge:
    """The hinge of a door, how it is set, and why it was taken, in words.

    `plate` is None for a hinge that states the overlays that it makes. `bore_from_edge` (B) runs
    from the door's edge to the cup's rim. `shift` is the overlay wanted less the overlay made.
    `side`, `height` and `depth` are how far its screws move the door, each way.
    `in_old_bores`: its cups sit in bores that the door has from before.
    """

    code: str
    name: str
    plate: Mm | None
    bore_from_edge: Mm
    shift: Mm
    cup_diameter: Mm
    cup_depth: Mm
    side: Mm
    height: Mm
    depth: Mm | None
    turn: Mm | None
    screws: int
    in_old_bores: bool
    reason: str

    @property
    def cup_from_edge(self) -> Mm:
        """From the door's edge to the middle of a cup."""
        return self.bore_from_edge + self.cup_diameter / 2

    @property
    def words(self) -> str:
        """What it is and how it is set: `H-1, plate 3 mm, B 5 mm`."""
        return f"{self.code}, {setting_words(self.plate, self.bore_from_edge)}"


def setting_words(plate: Mm | None, bore: Mm) -> str:
    """Hinges are metric wherever they are sold."""
    on_plate = "" if plate is None else f"plate {show(plate, 'mm')} mm, "
    return f"{on_plate}B {show(bore, 'mm')} mm"
