"""The panel on an appliance's door: within what the machine takes, in size and weight.

A machine's door carries its panel on its own fixings and hinges; its booklet says how narrow,
wide, low, high and heavy that may be.
"""

from collections.abc import Iterator

from fronts.rules.findings import FindingWriter
from fronts.rules.kinds import FRONT_KINDS
from fronts.rules.laying import Laid
from fronts.rules.machine_facts import ANY_MACHINE, Machine
from fronts.rules.results import Finding, Front


def machine_of(laid: Laid) -> Machine | None:
    """What is known of the machine whose door carries the front; None: none does."""
    return laid.decided.machine if FRONT_KINDS[laid.opening.closing.front].on_machine else None


def panel_findings(front: Front, writer: FindingWriter) -> Iterator[Finding]:
    """What the machine does not take; nothing to hold it against is told too."""
    machine = front.machine
    if machine is None:
        return
    if machine == ANY_MACHINE:
        yield writer.machine_unknown(front.label)
    for way, size, least, most in (
        ("wide", front.width, machine.least_width, machine.most_width),
        ("high", front.height, machine.least_height, machine.most_height),
    ):
        if least is not None and size < least:
            yield writer.panel_past_machine(front.label, size, way, least, "least")
        if most is not None and size > most:
            yield writer.panel_past_machine(front.label, size, way, most, "most")
    if machine.most_kg is not None and front.weight_kg > machine.most_kg:
        yield writer.panel_too_heavy(front.label, front.weight_kg, machine.most_kg)
