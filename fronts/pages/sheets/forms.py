"""The form that has a set printed: a press is all that it says."""

from shopjobs.forms.house import HouseForm


class PrintForm(HouseForm):
    """Nothing to enter; what stands against printing is said on it."""
