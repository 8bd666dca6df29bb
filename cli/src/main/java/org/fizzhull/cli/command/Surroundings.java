package org.fizzhull.cli.command;

import java.io.InputStream;
import org.fizzhull.cli.file.FileAccess;

/**
 * What a run may reach outside itself, its answer aside.
 *
 * @param in standard input; only {@code stream} reads it
 * @param files the files that it may open and write
 */
record Surroundings(InputStream in, FileAccess files) {
    /** No input, no files. */
    static final Surroundings NONE = new Surroundings(InputStream.nullInputStream(), FileAccess.NONE);
}
