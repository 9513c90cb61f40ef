"""Work that is done from the command line."""
