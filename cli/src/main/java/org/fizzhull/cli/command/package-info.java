/**
 * One class a command: which options it takes, how they become a question to the library, and which text, JSON or
 * picture answers. No physics. Entry class: {@link org.fizzhull.cli.command.Program}.
 */
@NullMarked
package org.fizzhull.cli.command;

import org.jspecify.annotations.NullMarked;
