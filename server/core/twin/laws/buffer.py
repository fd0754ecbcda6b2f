"""What acid does to pH: milk takes it up in groups, each about a pK of its own.

Casein and the calcium phosphate in its micelles stay in the curd; phosphate and
citrate go wherever water goes. Both are kept as kilograms of milk that they came
with, so a drained whey takes its share, and wash water brings none.

A pH is therefore never a curve over time here: it follows from acid made and from
what is there to take it up.
"""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.twin import Acid

LN_10 = 2.302585092994046
# (pK, mol in a kg of milk). Groups after the usual account of milk's buffering:
# colloidal phosphate and carboxyl groups near 5, phosphate and histidine near 6.6,
# citrate between; amounts fitted to the outside figures that the tests name.
CASEIN = ((5.05, 0.0285), (4.4, 0.043), (6.5, 0.0125))
SOLUBLE = ((7.6, 0.0048), (6.6, 0.0115), (5.6, 0.010))
LACTATE_PK = 3.86


def capacity_mol(acid: "Acid", ph: float) -> float:
    """Return the acid that lowers the pH by a small step, for each unit of the step.

    Args:
        acid: what is there to take it up.
        ph: pH at which it is asked.
    """
    casein = sum(mol * _bell(ph - pk) for pk, mol in CASEIN)
    soluble = sum(mol * _bell(ph - pk) for pk, mol in SOLUBLE)
    found = casein * acid["casein_mol"] + soluble * acid["soluble_mol"]
    return LN_10 * (found + acid["lactate_mol"] * _bell(ph - LACTATE_PK))


def after_acid(acid: "Acid", made_mol: float) -> float:
    """Return the pH once acid has been made.

    Lactic acid gives off nearly all its protons above pH 5, the rest is counted by
    its own group.

    Args:
        acid: what is there to take it up, at its pH.
        made_mol: lactic acid made; a small amount.

    Source: charge balance; the midpoint rule.
    """
    given = made_mol * (1.0 - undissociated_frac(acid["ph"]))
    half = acid["ph"] - given / capacity_mol(acid, acid["ph"]) / 2.0
    return acid["ph"] - given / capacity_mol(acid, half)


def undissociated_frac(ph: float) -> float:
    """Return the share of lactic acid that is not dissociated, by pH."""
    return 1.0 / (1.0 + 10.0 ** (ph - LACTATE_PK))


def titratable_frac(acid: "Acid", milk_kg: float) -> float:
    """Return what a titration to pH 8.3 finds, as lactic acid in its mass.

    Args:
        acid: what is titrated.
        milk_kg: how much of it there is [kg].

    Returns:
        Titratable acidity [0..1].

    Source: the groups' protons between the pH and 8.3.
    """
    rows = [(pk, mol * acid["casein_mol"]) for pk, mol in CASEIN]
    rows += [(pk, mol * acid["soluble_mol"]) for pk, mol in SOLUBLE]
    rows.append((LACTATE_PK, acid["lactate_mol"]))
    given = sum(mol * (_held(acid["ph"] - pk) - _held(8.3 - pk)) for pk, mol in rows)
    return given * 0.09008 / milk_kg


def _held(gap: float) -> float:
    return 1.0 / (1.0 + 10.0**gap)


def _bell(gap: float) -> float:
    share = _held(gap)
    return share * (1.0 - share)
