/**
 * A shape from its sizes: {@link org.fizzhull.shape.factory.Shapes} has a method for every kind that needs no file. What they
 * give is the inner {@code shape.kind}; a user meets {@link org.fizzhull.shape.Shape}.
 */
@NullMarked
package org.fizzhull.shape.factory;

import org.jspecify.annotations.NullMarked;
