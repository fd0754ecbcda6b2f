"""A maker who follows a recipe by what its steps hold."""
