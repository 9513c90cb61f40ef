"""The lines of the door maker's list, on the page and as files."""
