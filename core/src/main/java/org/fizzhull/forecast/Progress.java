package org.fizzhull.forecast;

/**
 * Hears how far a long answer is, and may stop it. Called on the thread that asked, before each part and after the
 * last.
 */
@FunctionalInterface
public interface Progress {
    /** Lets everything run to its end. */
    Progress SILENT = (done, all) -> true;

    /**
     * Called before each part and after the last.
     *
     * @param done parts that are finished
     * @param all number of parts
     * @return whether to go on; false ends the answer with a {@link java.util.concurrent.CancellationException}
     */
    boolean goesOn(int done, int all);
}
