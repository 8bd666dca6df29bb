package org.fizzhull.forecast.making;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fizzhull.drying.place.DryingPhase;
import org.fizzhull.drying.place.Standing;
import org.fizzhull.drying.place.Wrap;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.quantity.check.SerialForm;
import org.fizzhull.shape.Shape;

/**
 * How a piece is dried, wrapped and put away, as a maker says it; a shape makes a {@link DryingPlan} of it.
 *
 * <pre>{@code
 * DryingConditions rack = DryingConditions.open(RoomAir.of(Units.celsius(20), 0.5), 48 * 3600);
 * DryingPlan plan = rack.plan(ball); // keep it: the ways out of a shape with edges take tenths of a second
 * }</pre>
 *
 * <p>At most three phases: open on its standing, wrapped in the same room, stored. Immutable.
 *
 * @param air of the drying room; with a closed room, the air that comes in
 * @param room the closed room, if any; it holds while pieces dry, not while they are stored
 * @param standing what they dry on
 * @param fan whether a gentle fan blows while they lie open
 * @param open time on it without a wrap, s, above 0
 * @param wrap what they are wrapped in afterwards; none for pieces that stay open
 * @param wrapped time in the wrap in the drying room, s, 0 or more; 0 without a wrap
 * @param storage how long and in what air they are put away afterwards, if at all
 */
public record DryingConditions(
        RoomAir air,
        Optional<DryingPhase.ClosedRoom> room,
        Standing standing,
        boolean fan,
        double open,
        Wrap wrap,
        double wrapped,
        Optional<Storage> storage)
        implements Serializable {
    /**
     * Refuses times that are none.
     *
     * @param air of the drying room; with a closed room, the air that comes in
     * @param room the closed room, if any; it holds while pieces dry, not while they are stored
     * @param standing what they dry on
     * @param fan whether a gentle fan blows while they lie open
     * @param open time on it without a wrap, s, above 0
     * @param wrap what they are wrapped in afterwards; none for pieces that stay open
     * @param wrapped time in the wrap in the drying room, s, 0 or more; 0 without a wrap
     * @param storage how long and in what air they are put away afterwards, if at all
     * @throws IllegalArgumentException for a time below 0, no open time, or a time in a wrap that is none
     */
    public DryingConditions {
        Given.all("air, room, standing, wrap, storage", air, room, standing, wrap, storage);
        if (!(open > 0 && wrapped >= 0 && (wrap.present() || wrapped == 0))) {
            throw new IllegalArgumentException("open " + open + " s, then " + wrapped + " s in " + wrap.name());
        }
    }

    /**
     * {@return the conditions of a piece that lies open on a rack in still room air for so many seconds}
     *
     * @param air of the drying room; with a closed room, the air that comes in
     * @param seconds time that it lies open, s
     */
    public static DryingConditions open(RoomAir air, double seconds) {
        return new DryingConditions(
                air, Optional.empty(), Standing.RACK, false, seconds, Wrap.NONE, 0, Optional.empty());
    }

    /**
     * {@return the same lying open for another time, s}
     *
     * @param seconds time that it lies open, s
     */
    public DryingConditions openFor(double seconds) {
        return new DryingConditions(air, room, standing, fan, seconds, wrap, wrapped, storage);
    }

    /**
     * {@return the same in other air of the drying room}
     *
     * @param other air that they dry in; with a closed room, the air that comes in
     */
    public DryingConditions in(RoomAir other) {
        return new DryingConditions(other, room, standing, fan, open, wrap, wrapped, storage);
    }

    /** {@return the time before storage, s} */
    public double drying() {
        return open + wrapped;
    }

    /**
     * {@return the phases for a shape, storage included} May take some tenths of a second: keep the result.
     *
     * @param shape form of the piece
     */
    public DryingPlan plan(Shape shape) {
        Given.all("shape", shape);
        return plan(shape, Standing.Openings.of(shape, standing));
    }

    /**
     * {@return the phases for a shape whose ways out are known already, storage included}
     *
     * @param shape form of the piece
     * @param ways of this shape on the same standing
     * @throws IllegalArgumentException for ways out on another standing
     */
    public DryingPlan plan(Shape shape, Standing.Openings ways) {
        Given.all("shape", shape);
        if (ways.standing() != standing) {
            throw new IllegalArgumentException("ways out on a " + ways.standing() + ", dried on a " + standing);
        }
        List<DryingPhase> phases = new ArrayList<>(3);
        DryingPhase lying = inRoom(standing.phase(shape, ways.lying(), air, open));
        phases.add(fan ? lying.withFan() : lying);
        if (wrapped > 0) {
            phases.add(inRoom(DryingPhase.open(ways.around(), air, wrapped).in(wrap, 0)));
        }
        storage.ifPresent(put -> phases.add(DryingPhase.open(ways.around(), put.air(), put.seconds())
                .in(wrap, 0)
                .stored()));
        return new DryingPlan(phases);
    }

    /** The same phase in the closed room, where there is one. */
    private DryingPhase inRoom(DryingPhase phase) {
        return room.isPresent() ? phase.in(room.get()) : phase;
    }

    /**
     * Time put away between drying and bath.
     *
     * @param seconds above 0
     * @param air around the pieces or their wraps
     */
    public record Storage(double seconds, RoomAir air) implements Serializable {
        /**
         * Refuses what is missing, and what is no number.
         *
         * @param seconds above 0
         * @param air around the pieces or their wraps
         */
        public Storage {
            Given.all("air", air);
            Given.finite("seconds", seconds);
        }
    }

    private Object writeReplace() {
        return SerialForm.of(this);
    }
}
