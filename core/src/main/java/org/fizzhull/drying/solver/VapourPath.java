package org.fizzhull.drying.solver;

/**
 * The way of the vapour: from cell to cell along the depth profile, and out through the skin. With a the water
 * activity, g the conductance (kg/s per unit of activity) and RH the humidity of the room,
 *
 * <pre>
 *   from cell i to cell i-1   g_i (a_i - a_i-1),       g_i = D_e rho_sat A/(c distance)
 *   out through the skin      g_0 (a_0 - RH),          1/g_0 = 1/inside + 1/outside
 * </pre>
 *
 * <p>inside being the half cell behind the skin, outside the boundary layer with wrap and gap. Finite volumes, SI.
 * Mutable; one instance serves one thread.
 */
final class VapourPath {
    /** Volume of each cell, m3. */
    double[] volume = {};

    /** Vapour that passes from a cell to the one outside it, kg/s per unit of activity; entry 0 to the room. */
    double[] link = {};

    /** Change of the flux last asked for with the water of the outermost cell, m3/s. */
    double byWater;

    /** Change of that flux with the humidity of the room, kg/s. */
    double byRoom;

    /** Conductance of the half cell behind the skin, kg/s per unit of activity. */
    private double inside;
    /** Conductance from the skin to the room, kg/s per unit of activity; 0 for a closed skin. */
    private double outside;

    /**
     * Lays the cells out.
     *
     * @param vapour D_e rho_sat, kg/(m s) per unit of activity
     * @param surface K rho_sat, kg/(m2 s) per unit of activity; 0 for a closed skin
     */
    void lay(DryingGrid grid, double vapour, double surface) {
        if (link.length != grid.cells) {
            link = new double[grid.cells];
        }
        volume = grid.volume;
        for (int i = 1; i < grid.cells; i++) {
            link[i] = vapour * grid.conductance[i];
        }
        inside = vapour * grid.conductance[0];
        outside = surface * grid.skin;
        link[0] = outside == 0 ? 0 : inside * outside / (inside + outside);
    }

    /**
     * Flux out through the skin, kg/s, and its slopes. Where damp air would bring the skin itself above the film
     * activity, liquid forms on it: the way in through the first half cell then no longer counts. That liquid does not
     * flow inward here: how much fizz it eats depends on the thickness of the first cell.
     *
     * @param activity of the outermost cell
     * @param slope d activity / d water of that cell, m3/kg
     * @param room relative humidity of the room
     * @param film activity of the film
     */
    double throughSkin(double activity, double slope, double room, double film) {
        double wetting = outside * (room - film);
        if (wetting > inside * (film - activity) && room > film) {
            byWater = 0;
            byRoom = -outside;
            return -wetting;
        }
        byWater = link[0] * slope;
        byRoom = -link[0];
        return link[0] * (activity - room);
    }
}
