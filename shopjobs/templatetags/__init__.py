"""What every page of the site may say beside Django's own tags."""
