/**
 * Powders under a press: how densely grains pack, what liquid does between them, how long the mix may stand.
 *
 * <p>Entry: {@link org.fizzhull.pressing.powder.Press}. Equations: docs/physics/packing.md.
 */
@NullMarked
package org.fizzhull.pressing.powder;

import org.jspecify.annotations.NullMarked;
