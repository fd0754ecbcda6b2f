"""Titratable acidity from the alkali that a sample took."""

from ..numbers.bounds import require_above, require_at_least

LACTIC_KG_MOL = 0.090  # The trade's round figure: 1 mL of 0.1 N is 0.009 g.


def lactic_frac(alkali_ml: float, alkali_mol_l: float, sample_ml: float) -> float:
    """Return titratable acidity as lactic acid from a titration.

    Args:
        alkali_ml: alkali used to the pink end point [mL]; 0 or more.
        alkali_mol_l: strength of the alkali [mol/L]; above 0.
        sample_ml: milk or whey titrated [mL]; above 0.

    Returns:
        Lactic acid, g in 100 mL as a fraction [0..1].

    Raises:
        Refused: an amount is negative, or strength or sample is not above 0.

    Source: 1 mL of 0.1 N alkali answers 0.009 g lactic acid (dairy laboratory
        pages).
    Check: 1.6 mL of N/9 on 10 mL is 16 °D.

    >>> lactic_frac(1.6, 1 / 9, 10)
    0.0016
    """
    require_at_least("alkali_ml", alkali_ml, 0)
    require_above("alkali_mol_l", alkali_mol_l, 0)
    require_above("sample_ml", sample_ml, 0)
    return alkali_ml * alkali_mol_l * LACTIC_KG_MOL / sample_ml
