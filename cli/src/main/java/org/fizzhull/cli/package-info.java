/** The program {@code fizzhull}: reads the name of a command and hands over to it. Entry class: Main. */
@NullMarked
package org.fizzhull.cli;

import org.jspecify.annotations.NullMarked;
