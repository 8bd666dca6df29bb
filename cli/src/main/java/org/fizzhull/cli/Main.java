package org.fizzhull.cli;

import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.fizzhull.cli.program.Program;

/** Starts the command line in its own process. */
public final class Main {
    private Main() {}

    /** Runs one command and exits with its status: 0 answered, 2 refused, 1 failed. */
    public static void main(String[] words) {
        PrintStream out = stream(FileDescriptor.out);
        PrintStream err = stream(FileDescriptor.err);
        int status = new Program(new FileInputStream(FileDescriptor.in), out, err).run(words);
        if (out.checkError() && status == 0) {
            err.println("fizzhull: not all of the answer could be written: the disk is full, or the reader has gone.");
            status = 1;
        }
        err.flush();
        System.exit(status);
    }

    private static PrintStream stream(FileDescriptor to) {
        return new PrintStream(
                new java.io.BufferedOutputStream(new FileOutputStream(to), 8192), false, StandardCharsets.UTF_8);
    }
}
