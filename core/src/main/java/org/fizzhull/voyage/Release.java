package org.fizzhull.voyage;

/**
 * How a piece goes into the bath. It matters for hollow shapes alone: solid ones turn to the attitude of
 * {@link VoyageForm} whichever way they go in.
 */
public enum Release {
    /** Let go: a hollow floods. */
    DROPPED,
    /** Set down open side up: a hollow stays dry until its rim goes under. */
    PLACED,
    /** Let go open side down: a hollow keeps its air, which depth presses together. */
    UPSIDE_DOWN
}
