"""The pages that try a standard before it is kept."""
