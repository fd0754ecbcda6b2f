"""What a recipe must be, looked at part by part."""
