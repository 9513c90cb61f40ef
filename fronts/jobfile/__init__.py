"""A kitchen as a file: the backup, the way between two shops, and what tests feed."""

from fronts.jobfile.faults import Fault, Refused
from fronts.jobfile.read import read, read_bytes
from fronts.jobfile.schedule_json import schedule_json
from fronts.jobfile.source import read_file
from fronts.jobfile.write import write

__all__ = ["Fault", "Refused", "read", "read_bytes", "read_file", "schedule_json", "write"]
