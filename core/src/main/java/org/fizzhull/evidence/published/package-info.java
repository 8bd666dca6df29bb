/**
 * Constants of nature, and the range in which a published relation holds.
 *
 * <p>Entry: {@link org.fizzhull.evidence.published.ValidityRange}.
 */
@NullMarked
package org.fizzhull.evidence.published;

import org.jspecify.annotations.NullMarked;
