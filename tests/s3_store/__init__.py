"""Uploaded files in an S3 store: a server of that kind, asked over HTTP."""
