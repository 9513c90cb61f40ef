"""Things that stand by themselves: what is entered of each kind, and how it is shown."""
