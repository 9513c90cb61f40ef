"""A kitchen as it is written down on site: a line for each thing, a face in words.

Pure, as the rules are: no Django, no database. What is read is checked and exact; faces that a
shop saved under names of its own are passed in.
"""

from fronts.notebook.face import NO_FACES, Face, Faces, read_face
from fronts.notebook.face_words import face_words
from fronts.notebook.faults import LineFault, NotebookRefused, NotUnderstood
from fronts.notebook.going_on import Added, read_more, stand_lines, standing_behind
from fronts.notebook.lines import read_line, without_remark
from fronts.notebook.openings import Around, openings_of
from fronts.notebook.read import read_notebook
from fronts.notebook.regular_face import RegularFace, regular_face
from fronts.notebook.resized import openings_resized
from fronts.notebook.room_wanted import NoRoom, room_wanted

__all__ = [
    "NO_FACES", "Added", "Around", "Face", "Faces", "LineFault", "NoRoom", "NotUnderstood",
    "NotebookRefused", "RegularFace", "face_words", "openings_of", "openings_resized", "read_face",
    "read_line", "read_more", "read_notebook", "regular_face", "room_wanted", "stand_lines",
    "standing_behind", "without_remark",
]  # fmt: skip
