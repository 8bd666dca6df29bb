/**
 * The files of a first day: a recipe, moulds, a sheet for trials and the commands to type next. Start at
 * {@link org.fizzhull.cli.start.StartFolder}; their texts stand among the resources.
 */
@NullMarked
package org.fizzhull.cli.start;

import org.jspecify.annotations.NullMarked;
