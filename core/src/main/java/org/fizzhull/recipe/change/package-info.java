/**
 * The workshop's example recipes, and the shares of ingredients that have a limit.
 *
 * <p>Entry: {@link org.fizzhull.recipe.change.ExampleRecipes}.
 */
@NullMarked
package org.fizzhull.recipe.change;

import org.jspecify.annotations.NullMarked;
