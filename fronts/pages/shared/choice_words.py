"""The words in which a form offers what a table keeps in short."""

KINDS = (("base", "Base"), ("wall", "Wall"), ("tall", "Tall"))
BUILDS = (("face-frame", "Face-frame"), ("frameless", "Frameless"))
CLOSED_BY = (
    ("door", "Door"),
    ("pair", "Pair of doors"),
    ("drawer", "Drawer"),
    ("drawers", "Stack of drawers"),
    ("pull-out", "Pull-out"),
    ("fixed", "Fixed front"),
    ("open", "Nothing, it stays open"),
)
HINGED = (("left", "Left"), ("right", "Right"), ("top", "At the top"), ("bottom", "At the bottom"))
HAND = {"left": "left", "right": "right", "top": "at the top", "bottom": "at the bottom"}
"""After `hinged`."""
FRONT_BUILDS = (("slab", "Slab"), ("five-piece", "Five-piece"))
SLIDES = (("bottom", "Bottom, in the middle"), ("side", "At the sides"), ("under", "Under, hidden"))
MOUNTS = (("overlay", "Overlay"), ("inset", "Inset"))
