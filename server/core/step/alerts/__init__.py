"""What a person is warned of in a make: of a step, of the acid, of the whole."""
