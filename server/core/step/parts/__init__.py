"""What a step shows, part by part."""
