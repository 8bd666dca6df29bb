package org.fizzhull.cli.program;

import org.fizzhull.quantity.Refusal;

/**
 * A failure inside the program, told like a refusal: one line, and the same error object. The input may be right; what
 * helps is the command line and the place in the sources, which the line names.
 */
final class InternalFailure {
    /** Code of the error object. */
    static final String CODE = "internal-failure";

    private static final String OURS = "org.fizzhull.";

    private InternalFailure() {}

    static Refusal of(Throwable failure) {
        return new Refusal(
                CODE,
                "an internal failure",
                failure.getClass().getSimpleName() + ": " + failure.getMessage() + place(failure),
                "",
                hint(failure));
    }

    private static String hint(Throwable failure) {
        if (failure instanceof OutOfMemoryError) {
            return "There was too little memory: ask for fewer --samples, or give Java more by FIZZHULL_JAVA_OPTS=-Xmx2g.";
        }
        return "As far as is known the input is not at fault: please report the command line with this message.";
    }

    /** The first place of our own, such as {@code (Sphere.java:42)}; empty where there is none. */
    private static String place(Throwable failure) {
        for (StackTraceElement frame : failure.getStackTrace()) {
            if (frame.getClassName().startsWith(OURS)) {
                return " (" + frame.getFileName() + ":" + frame.getLineNumber() + ")";
            }
        }
        return "";
    }
}
