"""The pure core: facts in, meaning out; the phone runs these same files."""
