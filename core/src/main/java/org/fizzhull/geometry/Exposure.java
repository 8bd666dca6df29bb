package org.fizzhull.geometry;

/** Which faces of a piece are open to the air or the water. */
public enum Exposure {
    /** Every face. */
    ALL,
    /** Every face but the flat one it rests on; the same as ALL for a shape without a flat resting face. */
    TRAY,
    /** Every face but the hollow (and, for an open shape, its rim): what is wet of a boat. */
    OUTSIDE
}
