"""All makes together: kept, due, clashing, trending."""
