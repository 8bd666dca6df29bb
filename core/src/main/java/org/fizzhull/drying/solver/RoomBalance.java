package org.fizzhull.drying.solver;

/**
 * The vapour in the air of the room, the share of one piece: the one equation beside those of the cells. SI.
 *
 * <pre>  C dRH/dt = E (RH_in - RH) - dehumidifier(RH) + flux</pre>
 *
 * <p>C vapour that the share of one piece holds per unit of relative humidity (kg), E air renewed (kg/s per unit), RH
 * relative humidity, flux what the piece gives off (kg/s). Walls and cloth that take up water are left out. Source:
 * balance of mass, docs/physics/drying.md, 5. Mutable; one instance serves one thread.
 */
public final class RoomBalance {
    /** Whether the room keeps its humidity whatever the pieces give off. */
    private boolean fixed;
    /** Vapour that one piece's share of the room holds per unit of relative humidity, kg. */
    private double capacity;
    /** Air renewed in that share, kg/s per unit of relative humidity. */
    private double exchange;
    /** Relative humidity that the incoming air would have in this room. */
    private double incoming;
    /** Water that the dehumidifier takes from the share at full power, kg/s. */
    private double dryer;
    /** Relative humidity at which it starts. */
    private double from;
    /** Humidity above that at which it is at full power. */
    private double ramp;

    /** A room that is yet to be told its figures. */
    public RoomBalance() {}

    /** The room keeps its humidity whatever the pieces give off. */
    public void fix() {
        fixed = true;
    }

    /**
     * A closed room.
     *
     * @param capacity vapour the share holds per unit of relative humidity, kg
     * @param exchange air renewed, kg/s per unit of relative humidity
     * @param incoming what the humidity of the incoming air would be in this room
     * @param dryer water a dehumidifier takes at full power, kg/s
     * @param from humidity at which it starts
     * @param ramp humidity above that at which it is at full power
     */
    public void close(double capacity, double exchange, double incoming, double dryer, double from, double ramp) {
        fixed = false;
        this.capacity = capacity;
        this.exchange = exchange;
        this.incoming = incoming;
        this.dryer = dryer;
        this.from = from;
        this.ramp = ramp;
    }

    /** Whether the humidity stays what it is. */
    boolean fixed() {
        return fixed;
    }

    /**
     * What the room gains at a guess of its humidity over what it then holds more, kg/s.
     *
     * @param perStep 1 / length of the step, 1/s
     * @param before humidity at the start of the step
     * @param room the guess
     * @param flux water that comes from the piece, kg/s
     */
    double surplus(double perStep, double before, double room, double flux) {
        if (fixed) {
            return 0;
        }
        double drawn = dryer * Math.min(1, Math.max(0, (room - from) / ramp));
        return capacity * perStep * (before - room) + exchange * (incoming - room) - drawn + flux;
    }

    /** How the surplus falls with the humidity, kg/s; {@code byRoom} is how the flux from the piece rises with it. */
    double slope(double perStep, double room, double byRoom) {
        if (fixed) {
            return 1;
        }
        boolean ramping = room > from && room < from + ramp;
        return capacity * perStep + exchange - byRoom + (ramping ? dryer / ramp : 0);
    }
}
