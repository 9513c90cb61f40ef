"""What a person does about cutting: a plan, sets of fronts."""
