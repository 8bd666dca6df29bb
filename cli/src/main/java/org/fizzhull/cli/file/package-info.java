/**
 * Files that a person writes, read so that every mistake is refused with its file, line and mend. Entry class:
 * {@link org.fizzhull.cli.file.RecipeFile}. Amounts and names are read by the library; here is only the form of a file.
 * YAML classes are touched only when a file is named.
 */
@NullMarked
package org.fizzhull.cli.file;

import org.jspecify.annotations.NullMarked;
