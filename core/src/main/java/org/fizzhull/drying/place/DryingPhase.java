package org.fizzhull.drying.place;

import java.io.Serializable;
import java.util.Optional;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.quantity.check.SerialForm;

/**
 * One stretch of a piece's time between press and bath under the same conditions: open on a rack, in the mould,
 * wrapped, stored.
 *
 * <p>With h_m the transfer to the air (m/s), the conductance from skin to room is
 *
 * <pre>  1/k_s = 1/h_m + gap/D_va + 1/k_film</pre>
 *
 * <p>where D_va is the diffusivity of vapour in air (m2/s) and k_film that of the wrap with its seals
 * ({@link Wrap#conductance}). Made by {@link Standing#phase} or {@link #open}; a plan of phases by
 * {@code forecast.making}. Immutable. Source: docs/physics/drying.md, 5.
 *
 * @param opening the way out for vapour
 * @param air air of the room; with a closed room, the air that comes in
 * @param room the closed room, if any
 * @param wrap what it is wrapped in
 * @param gap still air between piece and wrap, or under a tray's rim, m
 * @param fan whether a gentle fan blows
 * @param duration s
 * @param storage whether the piece is put away: water taken up from damp air is then followed
 */
public record DryingPhase(
        Opening opening,
        RoomAir air,
        Optional<ClosedRoom> room,
        Wrap wrap,
        double gap,
        boolean fan,
        double duration,
        boolean storage)
        implements Serializable {

    /**
     * Refuses negative times and gaps.
     *
     * @param opening the way out for vapour
     * @param air air of the room; with a closed room, the air that comes in
     * @param room the closed room, if any
     * @param wrap what it is wrapped in
     * @param gap still air between piece and wrap, or under a tray's rim, m
     * @param fan whether a gentle fan blows
     * @param duration s
     * @param storage whether the piece is put away: water taken up from damp air is then followed
     * @throws IllegalArgumentException for a duration that is not above 0 or longer than 30 years, or a gap outside 0
     *     to 0.1 m
     */
    public DryingPhase {
        Given.all("opening, air, room, wrap", opening, air, room, wrap);
        if (!(duration > 0 && duration <= 1e9)) {
            throw new IllegalArgumentException(
                    "a phase lasts more than 0 s and at most 30 years, not " + duration + " s");
        }
        if (!(gap >= 0 && gap <= 0.1)) {
            throw new IllegalArgumentException("an air gap of " + gap + " m is not within 0 to 0.1 m");
        }
    }

    /**
     * {@return a phase in which the piece lies open in still room air}
     *
     * @param opening the way out for vapour
     * @param air air of the room; with a closed room, the air that comes in
     * @param duration s
     */
    public static DryingPhase open(Opening opening, RoomAir air, double duration) {
        return new DryingPhase(opening, air, Optional.empty(), Wrap.NONE, 0, false, duration, false);
    }

    /** {@return the same with a gentle fan} */
    public DryingPhase withFan() {
        return new DryingPhase(opening, air, room, wrap, gap, true, duration, storage);
    }

    /**
     * {@return the same for another time, s}
     *
     * @param seconds duration, s
     */
    public DryingPhase lasting(double seconds) {
        return new DryingPhase(opening, air, room, wrap, gap, fan, seconds, storage);
    }

    /**
     * {@return the same in other air}
     *
     * @param other air of the room
     */
    public DryingPhase in(RoomAir other) {
        return new DryingPhase(opening, other, room, wrap, gap, fan, duration, storage);
    }

    /**
     * {@return the same in a wrap that stands off by {@code gapMetres}}
     *
     * @param cover what it is wrapped in
     * @param gapMetres still air between piece and wrap, m
     */
    public DryingPhase in(Wrap cover, double gapMetres) {
        return new DryingPhase(opening, air, room, cover, gapMetres, fan, duration, storage);
    }

    /**
     * {@return the same in a closed room}
     *
     * @param closed the closed room
     */
    public DryingPhase in(ClosedRoom closed) {
        Given.all("closed", closed);
        return new DryingPhase(opening, air, Optional.of(closed), wrap, gap, fan, duration, storage);
    }

    /** {@return the same, put away for storage} */
    public DryingPhase stored() {
        return new DryingPhase(opening, air, room, wrap, gap, fan, duration, true);
    }

    private Object writeReplace() {
        return SerialForm.of(this);
    }

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
                        "a closed room has a volume, air changes, a dehumidifier of 0 or more and"
                                + " at least one piece");
            }
        }
    }
}
