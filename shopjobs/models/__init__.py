"""The tables of shops, people, sessions, clients, jobs, their history, long work, files put."""

from shopjobs.models.client import Client, Site
from shopjobs.models.file_put import FilePut
from shopjobs.models.job import Job
from shopjobs.models.person import Person, Role
from shopjobs.models.revision import Revision
from shopjobs.models.sent_form import SentForm
from shopjobs.models.session import Session
from shopjobs.models.shop import Paper, Shop, Unit
from shopjobs.models.sign_in import SignInFailure
from shopjobs.models.task import BackgroundTask, TaskState, Worker

__all__ = [
    "BackgroundTask", "Client", "FilePut", "Job", "Paper", "Person", "Revision", "Role", "SentForm",
    "Session", "Shop", "SignInFailure", "Site", "TaskState", "Unit", "Worker",
]  # fmt: skip
