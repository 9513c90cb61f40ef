"""What a person does at a kitchen, thing by thing."""
