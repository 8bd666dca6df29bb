package org.fizzhull.cli;

import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.fizzhull.cli.file.FileAccess;
import org.fizzhull.cli.program.Program;

/** One command line run in this process: exit status and both streams. */
public record CommandRun(int status, String out, String err) {
    public static CommandRun of(String... words) {
        return in(FileAccess.ANY, words);
    }

    /** The same with file names that count from a folder. */
    public static CommandRun in(Path folder, String... words) {
        return in(FileAccess.from(folder), words);
    }

    private static CommandRun in(FileAccess files, String... words) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int status = new Program(
                        InputStream.nullInputStream(),
                        new PrintStream(out, true, StandardCharsets.UTF_8),
                        new PrintStream(err, true, StandardCharsets.UTF_8),
                        files)
                .run(words);
        return new CommandRun(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }
}
