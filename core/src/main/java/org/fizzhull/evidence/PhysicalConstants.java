package org.fizzhull.evidence;

/** Constants of nature and conventional values, each exact (SI Brochure, 9th edition, and its appendices; from memory). */
public final class PhysicalConstants {
    /** Molar gas constant, J/(mol K). */
    public static final double GAS_CONSTANT = 8.31446261815324;

    /** One standard atmosphere, Pa. */
    public static final double ATMOSPHERE = 101325;

    /** Standard acceleration of free fall, m/s2. */
    public static final double GRAVITY = 9.80665;

    private PhysicalConstants() {}
}
