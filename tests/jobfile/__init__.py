"""Tests of the job file: what it says, what it refuses."""
