"""The forms of suppliers and offers."""
