package org.fizzhull.answer.body;

/** The version of library and program: a constant, since reading a manifest would cost every short command some milliseconds. */
public final class Version {
    /** The version of the build; a test of the command line holds it against the project file. */
    public static final String TEXT = "0.1.0";

    private Version() {}
}
