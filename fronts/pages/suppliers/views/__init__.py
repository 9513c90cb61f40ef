"""Views of suppliers and offers."""
