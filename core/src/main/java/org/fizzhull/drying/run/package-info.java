/**
 * The computation of a drying course: the walk through the phases of a plan, its goals and notices.
 *
 * <p>Entry: {@link org.fizzhull.drying.run.Drying}. Equations: docs/physics/drying.md.
 */
@NullMarked
package org.fizzhull.drying.run;

import org.jspecify.annotations.NullMarked;
