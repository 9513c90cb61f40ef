"""The forms in which the order is checked, approved, sent and received."""
