package org.fizzhull.geometry;

/**
 * Which faces of a piece are open to the air or the water, and so lose vapour or material: a drying piece on a rack
 * shows every face, one on a tray all but its base, a floating bowl only its outside. Chooses one of the depth profiles
 * of a {@link org.fizzhull.shape.Shape}.
 */
public enum Exposure {
    /** Every face. */
    ALL,
    /** Every face but the flat one it rests on; the same as ALL for a shape without a flat resting face. */
    TRAY,
    /** Every face but the hollow (and, for an open shape, its rim): what is wet of a boat. */
    OUTSIDE
}
