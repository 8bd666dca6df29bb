/**
 * Published relations for water and air, a class each, named after authors and year.
 *
 * <p>Entry: the class of the property that is asked for; sources stand in each.
 */
@NullMarked
package org.fizzhull.medium.relation;

import org.jspecify.annotations.NullMarked;
