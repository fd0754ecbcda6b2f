"""What a make knows of its wheels: pressed, brined, cured, analysed."""
