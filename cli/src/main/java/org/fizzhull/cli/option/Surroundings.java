package org.fizzhull.cli.option;

import java.io.InputStream;
import java.util.List;
import java.util.function.Function;
import org.fizzhull.cli.file.FileAccess;

/**
 * What a run may reach outside itself, its answer aside.
 *
 * @param in standard input; only {@code stream} reads it
 * @param files the files that it may open and write
 * @param takers names of the commands that take an option, by its name without dashes
 */
public record Surroundings(InputStream in, FileAccess files, Function<String, List<String>> takers) {}
