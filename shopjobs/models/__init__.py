"""The tables of shops, people, their sessions, jobs and the diary."""

from shopjobs.models.diary import DiaryEntry
from shopjobs.models.job import Job
from shopjobs.models.person import Person, Role
from shopjobs.models.session import Session
from shopjobs.models.shop import Paper, Shop, Unit
from shopjobs.models.sign_in import SignInFailure

__all__ = [
    "DiaryEntry",
    "Job",
    "Paper",
    "Person",
    "Role",
    "Session",
    "Shop",
    "SignInFailure",
    "Unit",
]
