"""What is bought, as the page shows it and as files."""
