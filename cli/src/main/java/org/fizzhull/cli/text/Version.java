package org.fizzhull.cli.text;

/** The program's version: a constant, since reading a manifest would cost every short command some milliseconds. */
public final class Version {
    /** The version of the build; a test holds it against the project file. */
    public static final String TEXT = "0.1.0";

    private Version() {}
}
