"""What if: a job's standard tried before it is kept, and the one that suits the doors on hand."""
