/**
 * {@code shapes}: what is known of a shape by itself. Start at {@link org.fizzhull.cli.shapes.ShapesCommand}.
 */
@NullMarked
package org.fizzhull.cli.shapes;

import org.jspecify.annotations.NullMarked;
