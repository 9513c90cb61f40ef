"""Why a door has its hinge, and what of it does not fit, in words."""

from fronts.rules.findings import FindingWriter
from fronts.rules.hinge_choice import (
    NEAR,
    DoorToHang,
    HingeSetting,
    misfits,
    within_adjustment,
)
from fronts.rules.hinge_results import DoorHinge, setting_words
from fronts.rules.hung_door import HungDoor
from fronts.rules.kinds import CABINET_BUILDS, is_inset
from fronts.rules.old_bores import Reused
from fronts.rules.results import Finding


def hinge_findings(
    hung: HungDoor, setting: HingeSetting | None, writer: FindingWriter
) -> list[Finding]:
    """What of its hinge does not fit a door; a stop where it has none."""
    to_hang, label = hung.to_hang, hung.laid.label
    if to_hang is None:
        return []
    findings = []
    code = hung.laid.decided.hinge
    if code is not None and hung.chosen is None:
        findings.append(writer.hinge_unsuited(label, code, ["it is not in the shop's list"]))
    if setting is None:
        stop = writer.no_hinge(label, to_hang.overlay, to_hang.build, to_hang.thickness)
        return [*findings, stop]
    why = _why_not(setting, to_hang, writer)
    if why:
        findings.append(writer.hinge_unsuited(label, setting.hinge.item.code, why))
    elif abs(setting.shift) > NEAR:
        code = setting.hinge.item.code
        findings.append(writer.hinge_adjusted(label, code, to_hang.overlay, setting.shift))
    return findings


def _why_not(setting: HingeSetting, door: DoorToHang, writer: FindingWriter) -> list[str]:
    """In words, what of a door a hinge is not for: only where somebody chose it."""
    item = setting.hinge.item
    words = {
        "frame": f"it is not for {CABINET_BUILDS[door.build].says.lower()} cabinets",
        "mount": f"it is for {'inset' if is_inset(item.mount) else 'overlay'} doors",
        "most_door_thickness": f"the door is {writer.say(door.thickness)} thick, too thick for it",
    }
    why = [words[fact] for fact in misfits(setting.hinge, door)]
    if abs(setting.shift) > NEAR and not within_adjustment(setting):
        off = writer.say(abs(setting.shift))
        why.append(f"what it makes is {off} off {writer.say_overlay(door.overlay)}")
    return why


def door_hinge(
    hung: HungDoor, setting: HingeSetting, again: Reused | None, writer: FindingWriter
) -> DoorHinge:
    """The hinge as it is set, with its reason."""
    hinge, item = setting.hinge, setting.hinge.item
    return DoorHinge(
        code=item.code,
        name=item.name,
        plate=setting.plate,
        bore_from_edge=setting.bore,
        shift=setting.shift,
        cup_diameter=item.cup_diameter,
        cup_depth=item.cup_depth,
        side=hinge.side,
        height=hinge.height,
        depth=item.adjust.depth,
        turn=item.turn,
        screws=hinge.screws,
        in_old_bores=again is not None,
        reason=_reason(hung, setting, again, writer),
    )


def _reason(
    hung: HungDoor, setting: HingeSetting, again: Reused | None, writer: FindingWriter
) -> str:
    overlay = hung.laid.overlays[hung.hinged]
    made = "" if overlay is None else writer.say_overlay(overlay)
    if hung.chosen is not None and hung.is_chosen:
        why = "chosen for this door"
    elif again:
        why = f"the shop's first whose cup fits the door's old bores and that makes {made}"
    elif hung.chosen is not None:
        why = "named by its standard"
    else:
        why = f"the shop's first that makes {made}"
    return f"{why}: {setting_words(setting.plate, setting.bore)}"
