/**
 * What goes into a piece: which ingredient is meant, how much of it there is, and what the mix amounts to.
 *
 * <p>Enter at {@link org.fizzhull.recipe.IngredientTable#standard()} and {@link org.fizzhull.recipe.RecipeBuilder}; the
 * result that the later stages take is {@link org.fizzhull.recipe.Blend}. Data: sheet "packing" sections 1 and 5, sheet
 * "fizz" section 1 (moles), sheet "drying" section 3 (sorption), sheet "trade" section 6 (names). Values are SI inside;
 * the data files and people use the units printed by {@link org.fizzhull.recipe.Property}. Left out: files and YAML
 * (the command line reads them), any judgement whether a share is safe on skin.
 */
@NullMarked
package org.fizzhull.recipe;

import org.jspecify.annotations.NullMarked;
