"""One answer for each figure of a step: by a person, by its sum, or by the recipe."""
