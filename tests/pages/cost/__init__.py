"""What a job costs."""
