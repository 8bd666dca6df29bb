/**
 * An answer as one printable page: how does the text of a command become HTML with its picture, inputs and cautions?
 * Start at {@link org.fizzhull.cli.page.ReportPage}. The page needs no script, no network and no font of its own.
 */
@NullMarked
package org.fizzhull.cli.page;

import org.jspecify.annotations.NullMarked;
