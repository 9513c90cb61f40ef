"""Notebooks: lines and faces, right and wrong, and there and back."""
