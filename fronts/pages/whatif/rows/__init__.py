"""What the pages show: a kitchen beside what it would be, and choices in their order."""
