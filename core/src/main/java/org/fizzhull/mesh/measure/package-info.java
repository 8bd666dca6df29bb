/**
 * Measures of a closed mesh: mass properties, sets of facets, the error of its chords.
 *
 * <p>Entry: {@link org.fizzhull.mesh.measure.MassProperties}.
 */
@NullMarked
package org.fizzhull.mesh.measure;

import org.jspecify.annotations.NullMarked;
