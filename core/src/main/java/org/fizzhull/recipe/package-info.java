/**
 * What goes into a piece: which ingredient is meant, how much of it there is, and what the mix amounts to.
 *
 * <p>Enter at {@link org.fizzhull.recipe.IngredientTable#standard()} and {@link org.fizzhull.recipe.RecipeBuilder}; the
 * result that the later stages take is {@link org.fizzhull.recipe.Blend}. Data: the ingredient table with its sources;
 * docs/physics/packing.md, 1, fizz.md, 1 (moles), drying.md, 2 (sorption). Values are SI inside;
 * the data files and people use the units printed by {@link org.fizzhull.recipe.Property}. Left out: files and YAML
 * (the command line reads them), any judgement whether a share is safe on skin.
 */
@NullMarked
package org.fizzhull.recipe;

import org.jspecify.annotations.NullMarked;
