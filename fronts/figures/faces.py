"""What closes a cabinet, in the words in which it may be typed."""

from fronts.notebook import face_words, regular_face
from fronts.rules.job_facts import JobFacts
from fronts.rules.kitchen import Cabinet


def words_of_face(cabinet: Cabinet, job: JobFacts) -> str:
    """`drawer 6 over pair`; "" where no words say where its openings are."""
    known = regular_face(cabinet, job.unit, job.step)
    return face_words(known.face, job.unit) if known else ""
