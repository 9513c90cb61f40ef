"""What must hold when processes are killed, locks are held, and several people work at once.

The core runs with the whole suite; what takes minutes runs by a command of its own.
"""
