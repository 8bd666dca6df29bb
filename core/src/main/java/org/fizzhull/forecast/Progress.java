package org.fizzhull.forecast;

/**
 * Hears how far a long answer is, and may stop it. Called on the thread that asked, before each part and after the
 * last.
 *
 * <p>Taken by {@link org.fizzhull.forecast.joint.JointPredictor}, part by part; to hear of single draws, watch the
 * workers ({@link org.fizzhull.uncertainty.Workers#watched}).
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
