"""What is in stock of what the shop buys: counted, laid by for jobs, used."""
