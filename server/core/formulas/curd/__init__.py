"""From the cut to the wheel: wash, bed, press, yield, composition."""
