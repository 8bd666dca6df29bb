package org.fizzhull.drying.place;

import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import org.fizzhull.evidence.published.PhysicalConstants;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.quantity.check.Given;

/**
 * What a piece is wrapped in. Films are given by their permeability to water vapour at 38 C; it falls with the
 * temperature by 34 kJ/mol (polyethylene [from memory, medium]).
 *
 * <p>Water vapour passes at {@code P (p_in - p_out)/l}, P permeability, l thickness; seals and holes stand beside the
 * film as a share of it. Permeabilities: docs/physics/drying.md, 5. Immutable.
 *
 * @param name as people write it
 * @param thickness of the film, m; 0 for no wrap
 * @param permeability at 38 C, kg m/(m2 s Pa); 0 for a tight wall
 * @param rigid whether it is a rigid closed vessel, which gas can burst
 * @param note basis of the figures
 */
public record Wrap(String name, double thickness, double permeability, boolean rigid, String note)
        implements Serializable {
    /** 1 g mil/(100 in2 day) at 38 C, 90 % RH, in kg m/(m2 s Pa) [computed from the definitions of the units]. */
    public static final double GRAM_MIL = 2.54e-8 / (0.064516 * 86400 * 0.9 * 6632.95);

    /** No wrap. */
    public static final Wrap NONE = new Wrap("none", 0, 0, false, "");

    /** Fall of the permeability with the temperature, J/mol. */
    private static final double ACTIVATION = 34e3;
    /** Basis of most permeabilities. */
    private static final String TABLE = "Food Package Engineering, table 11.2 [seen], middle of its range";

    /** Wraps known by name: thickness, m, and permeability, g mil/(100 in2 day), of usual goods. */
    private static final List<Wrap> NAMED = List.of(
            NONE,
            film("shrink film", 19e-6, 1.2, "no published figure read; 0.6 to 2 g mil/(100 in2 d) [assumed]"),
            film("cling film", 12e-6, 27, TABLE + ", plasticised PVC"),
            film("polyethylene bag", 50e-6, 1.5, TABLE + ", LDPE"),
            film("thin polyethylene bag", 25e-6, 1.5, TABLE + ", LDPE"),
            film("polypropylene bag", 30e-6, 0.35, TABLE + ", oriented PP"),
            new Wrap("jar", 1e-3, 0, true, "tight rigid wall; seal not counted [assumed]"));

    /**
     * Refuses negative and missing numbers.
     *
     * @param name as people write it
     * @param thickness of the film, m; 0 for no wrap
     * @param permeability at 38 C, kg m/(m2 s Pa); 0 for a tight wall
     * @param rigid whether it is a rigid closed vessel, which gas can burst
     * @param note basis of the figures
     * @throws IllegalArgumentException for a thickness or permeability out of range
     */
    public Wrap {
        Given.all("name, note", name, note);
        if (!(thickness >= 0 && thickness < 0.01 && permeability >= 0 && permeability < 1e-8)) {
            throw new IllegalArgumentException("wrap " + name + " has a thickness or permeability out of range");
        }
    }

    /**
     * {@return a film: thickness in m, permeability in g mil/(100 in2 day) at 38 C}
     *
     * @param name as people write it
     * @param thickness of the film, m; 0 for no wrap
     * @param gramMil water vapour permeability at 38 C, g mil/(100 in2 day), as data sheets of films give it
     * @param note basis of the figures
     */
    public static Wrap film(String name, double thickness, double gramMil, String note) {
        return new Wrap(name, thickness, gramMil * GRAM_MIL, false, note);
    }

    /** {@return the wraps known by name} */
    public static List<Wrap> named() {
        return NAMED;
    }

    /**
     * {@return the wrap of that name, in lower case}
     *
     * @param name name as people write it
     */
    public static Optional<Wrap> named(String name) {
        Given.all("name", name);
        for (Wrap wrap : NAMED) {
            if (wrap.name.equals(name)) {
                return Optional.of(wrap);
            }
        }
        return Optional.empty();
    }

    /** {@return whether anything lies between the piece and the air} */
    public boolean present() {
        return thickness > 0;
    }

    /**
     * {@return the conductance of film and seals as a mass transfer coefficient on vapour density, m/s: {@code P R_v T
     * / l} with the leak in parallel} Of a present wrap only.
     *
     * @param kelvin temperature
     * @param leak conductance of the seals against the film's
     */
    public double conductance(double kelvin, double leak) {
        double now = permeability * Math.exp(-ACTIVATION / PhysicalConstants.GAS_CONSTANT * (1 / kelvin - 1 / 311.15));
        return now * (1 + leak) * RoomAir.VAPOUR_GAS_CONSTANT * kelvin / thickness;
    }
}
