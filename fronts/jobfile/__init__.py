"""A kitchen as a file: the backup, the way between two shops, and what tests feed."""

from fronts.jobfile.faults import Fault, Refused
from fronts.jobfile.json_text import decoded
from fronts.jobfile.read import JobFile, read, read_bytes, read_job
from fronts.jobfile.schedule_json import schedule_json
from fronts.jobfile.source import read_file, read_text
from fronts.jobfile.write import write

__all__ = [
    "Fault", "JobFile", "Refused", "decoded", "read", "read_bytes", "read_file", "read_job",
    "read_text", "schedule_json", "write",
]  # fmt: skip
