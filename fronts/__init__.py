"""What the shop makes: the trade's rules, and everything shown of them."""
