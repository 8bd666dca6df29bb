/**
 * Measures of a closed mesh: mass properties, sets of facets, the surfaces it is made of, the error of its chords; and the two
 * collections that meshes need, numbers by key and sets that grow together.
 *
 * <p>Entry: {@link org.fizzhull.mesh.measure.MassProperties}.
 */
@NullMarked
package org.fizzhull.mesh.measure;

import org.jspecify.annotations.NullMarked;
