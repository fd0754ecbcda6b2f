"""Recipes, each version for ever: a make may always be traced to its recipe."""

import hashlib
import json
from typing import Any

from sqlalchemy import BigInteger, String, Text, func, select
from sqlalchemy.orm import Mapped, mapped_column

from server.store.database import reading, writing
from server.store.head import locked_head
from server.store.models import Base


class RecipeRow(Base):
    """One version of one recipe. Rows are only ever added."""

    __tablename__ = "recipes"

    id: Mapped[str] = mapped_column(String(60), primary_key=True)
    version: Mapped[int] = mapped_column(primary_key=True, autoincrement=False)
    # Of the content without its version, to know it again.
    sha256: Mapped[str] = mapped_column(String(64))
    text: Mapped[str] = mapped_column(Text)
    stored_ms: Mapped[int] = mapped_column(BigInteger)
    person: Mapped[str | None] = mapped_column(String(64))


def _fingerprint(recipe: dict[str, Any]) -> str:
    content = {name: recipe[name] for name in recipe if name != "version"}
    text = json.dumps(content, sort_keys=True, separators=(",", ":"))
    return hashlib.sha256(text.encode()).hexdigest()


def store_recipe(
    recipe: dict[str, Any], stored_ms: int, person: str | None
) -> dict[str, Any]:
    """Keep a recipe as a new version, unless its content is kept already.

    Args:
        recipe: a sound recipe.
        stored_ms: the server's time [ms].
        person: id of who sent it; None for one that came with the program.

    Returns:
        The recipe with the version under which it is kept.
    """
    sha256 = _fingerprint(recipe)
    with writing() as session:
        # Two writers must not take the same version number.
        locked_head()
        own = RecipeRow.id == recipe["id"]
        newest = session.scalar(select(func.max(RecipeRow.version)).where(own)) or 0
        same = session.scalar(
            select(func.max(RecipeRow.version)).where(own, RecipeRow.sha256 == sha256)
        )
        if same is not None and (person is None or same == newest):
            return {**recipe, "version": same}
        # What comes with the program says its own number, on a new server too.
        least = recipe["version"] if person is None else 1
        kept = {**recipe, "version": max(newest + 1, least)}
        session.add(
            RecipeRow(
                id=recipe["id"],
                version=kept["version"],
                sha256=sha256,
                text=json.dumps(kept, ensure_ascii=False),
                stored_ms=stored_ms,
                person=person,
            )
        )
    return kept


def newest_recipes() -> list[dict[str, Any]]:
    """Return the newest version of each recipe, ordered by id."""
    newest = (
        select(RecipeRow.id, func.max(RecipeRow.version).label("version"))
        .group_by(RecipeRow.id)
        .subquery()
    )
    same = (RecipeRow.id == newest.c.id) & (RecipeRow.version == newest.c.version)
    query = select(RecipeRow.text).join(newest, same).order_by(RecipeRow.id)
    with reading() as session:
        return [json.loads(text) for text in session.scalars(query)]


def find_recipe(recipe_id: str, version: int | None = None) -> dict[str, Any] | None:
    """Return one recipe.

    Args:
        recipe_id: its id.
        version: its version; None for the newest.

    Returns:
        The recipe, or None when there is none such.
    """
    query = select(RecipeRow.text).where(RecipeRow.id == recipe_id)
    if version is not None:
        query = query.where(RecipeRow.version == version)
    query = query.order_by(RecipeRow.version.desc()).limit(1)
    with reading() as session:
        text = session.scalar(query)
    return None if text is None else json.loads(text)
