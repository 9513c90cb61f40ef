"""A job as a file: taken in, and handed out."""
