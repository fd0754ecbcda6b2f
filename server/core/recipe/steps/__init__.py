"""The check of a recipe's steps, a part of a step a module."""
