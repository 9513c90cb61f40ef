"""The tables of shops, people, their sessions, jobs, the diary and long work."""

from shopjobs.models.diary import DiaryEntry
from shopjobs.models.job import Job
from shopjobs.models.person import Person, Role
from shopjobs.models.sent_form import SentForm
from shopjobs.models.session import Session
from shopjobs.models.shop import Paper, Shop, Unit
from shopjobs.models.sign_in import SignInFailure
from shopjobs.models.task import BackgroundTask, TaskState, Worker

__all__ = [
    "BackgroundTask", "DiaryEntry", "Job", "Paper", "Person", "Role", "SentForm", "Session",
    "Shop", "SignInFailure", "TaskState", "Unit", "Worker",
]  # fmt: skip
