/**
 * Files for shells and for {@code man}, made from the commands' own options: {@link org.fizzhull.cli.shell.BashCompletion},
 * {@link org.fizzhull.cli.shell.ZshCompletion} and {@link org.fizzhull.cli.shell.ManualPage} of a list of
 * {@link org.fizzhull.cli.shell.CommandPage}. Pure text; nothing here reads or writes a file.
 */
@NullMarked
package org.fizzhull.cli.shell;

import org.jspecify.annotations.NullMarked;
