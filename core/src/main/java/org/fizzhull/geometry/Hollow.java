package org.fizzhull.geometry;

/**
 * The hollow of an open shape, open side up in the body frame: a bowl floats like a boat while this stays dry. The boat
 * displaces with {@code closed}; it takes in water when {@code rim} goes under ({@link
 * org.fizzhull.hydrostatics.Boat}).
 * <pre>
 *   volume of the hollow = closed.volume() - volume of the bare material
 * </pre>
 *
 * <p>Immutable where its hull is, as those of the library are.
 *
 * @param closed the hull with the hollow closed by the rim plane: what displaces water while the hollow is dry
 * @param rimHeight height of the rim plane, m: of the lowest place over which water gets in
 * @param rim where water gets in when the body leans
 * @param volume volume of the hollow below the rim plane, m3
 * @param carried part of the closed hull's volume below the rim plane, m3: what is displaced when the rim goes under;
 *     less than all of it where material stands above the rim
 * @param wall the thinnest wall that keeps the water out, m: how far the outside may recede before the air escapes
 */
public record Hollow(Hull closed, double rimHeight, Rim rim, double volume, double carried, double wall) {
    /**
     * {@return a hollow around the z axis whose rim is its highest point; with the outer radius of the rim, m}
     *
     * @param closed the hull with the hollow closed by the rim plane: what displaces water while the hollow is dry
     * @param rimHeight height of the rim plane, m: of the lowest place over which water gets in
     * @param rimRadius outer radius of the rim, m: where water first runs in when the body leans
     * @param volume volume of the hollow below the rim plane, m3
     * @param wall the thinnest wall that keeps the water out, m: how far the outside may recede before the air escapes
     */
    public static Hollow round(Hull closed, double rimHeight, double rimRadius, double volume, double wall) {
        return new Hollow(closed, rimHeight, new Rim.Circle(rimHeight, rimRadius), volume, closed.volume(), wall);
    }
}
