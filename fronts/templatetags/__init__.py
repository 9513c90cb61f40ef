"""What templates of kitchens may say beside Django's own."""
