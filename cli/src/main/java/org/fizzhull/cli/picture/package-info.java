/** Small, self-contained SVG pictures with real text, a title and a description. No physics. */
@NullMarked
package org.fizzhull.cli.picture;

import org.jspecify.annotations.NullMarked;
