package org.fizzhull.drying.place;

import java.io.Serializable;

/**
 * A closed room in which the pieces themselves make the air damp. The air that comes in is the phase's {@code RoomAir}:
 * what the room would have without the pieces. Walls, cloth and wood that buffer the damp are left out: a real room is
 * slower to change than this.
 *
 * <p>Balance: {@link org.fizzhull.drying.solver.RoomBalance}; as people write it: {@link RoomText}. Immutable.
 *
 * @param volume m3
 * @param airChanges room volumes of fresh air per second
 * @param dehumidifier water it takes at full power, kg/s; 0 for none
 * @param setPoint relative humidity at which the dehumidifier starts; at full power 0.05 above [assumed]
 * @param pieces number of like pieces in the room
 */
public record ClosedRoom(double volume, double airChanges, double dehumidifier, double setPoint, int pieces)
        implements Serializable {
    /** Humidity above the set point at which the dehumidifier is at full power. */
    public static final double RAMP = 0.05;

    /**
     * Refuses what is out of range.
     *
     * @param volume m3
     * @param airChanges room volumes of fresh air per second
     * @param dehumidifier water it takes at full power, kg/s; 0 for none
     * @param setPoint relative humidity at which the dehumidifier starts; at full power 0.05 above [assumed]
     * @param pieces number of like pieces in the room
     * @throws IllegalArgumentException for a volume, air changes, dehumidifier or number of pieces out of range
     */
    public ClosedRoom {
        boolean sound = volume > 0
                && volume <= 1e6
                && airChanges >= 0
                && airChanges <= 1
                && dehumidifier >= 0
                && dehumidifier <= 1
                && setPoint >= 0
                && setPoint <= 1
                && pieces >= 1;
        if (!sound) {
            throw new IllegalArgumentException(
                    "a closed room has a volume, air changes, a dehumidifier of 0 or more and" + " at least one piece");
        }
    }
}
