"""How fast it is: each file measures one thing and prints it beside its target."""
