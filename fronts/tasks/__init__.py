"""Long work: what the worker makes, a file each kind."""
