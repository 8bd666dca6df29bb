package org.fizzhull.validation.check;

import static org.fizzhull.quantity.Units.inMillimetres;

import org.fizzhull.geometry.Hollow;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.hydrostatics.Boat;
import org.fizzhull.hydrostatics.BoatLimit;
import org.fizzhull.hydrostatics.Stability;
import org.fizzhull.shape.Shape;
import org.fizzhull.validation.published.HemisphericalBell;
import org.fizzhull.validation.table.Bindings;
import org.fizzhull.validation.table.Inputs;

/** Bodies afloat: drafts, centres, metacentric heights, boats, the ways a body rests and where they end. mm, degrees. */
public final class HydrostaticsChecks extends Bindings {
    public HydrostaticsChecks() {
        super("hydrostatics");
        heldUpright();
        boats();
        bell();
        limits();
        bind("ways", in -> Ways.of(in).size());
        bind("way-angle", in -> Ways.of(in).get((int) in.number("way") - 1));
    }

    private void heldUpright() {
        bind("draft", in -> inMillimetres(afloat(in).draft().draft()));
        bind("energy", in -> inMillimetres(afloat(in).stability().energy()));
        bind("bm", in -> inMillimetres(afloat(in).stability().bmSmaller()));
        bind("gm", in -> inMillimetres(afloat(in).stability().gmSmaller()));
        bind("gm-larger", in -> inMillimetres(afloat(in).stability().gmLarger()));
        bind("water-plane", in -> 1e6 * afloat(in).cut().area);
        bind("water-line", in -> 1e3 * Math.sqrt(afloat(in).cut().area / Math.PI));
        bind("buoyancy-height", in -> inMillimetres(afloat(in).buoyancy().z()));
        bind("displaced", in -> 1e9 * afloat(in).cut().volume);
        bind("first-moment", HydrostaticsChecks::firstMoment);
        bind("halves-gm", HydrostaticsChecks::halves);
    }

    private void boats() {
        bind("boat-draft", in -> inMillimetres(boat(in).draft()));
        bind("boat-freeboard", in -> inMillimetres(boat(in).rimFreeboard()));
        bind("boat-gm", in -> inMillimetres(boat(in).gmSmaller()));
        bind("boat-rim-dips", in -> Math.toDegrees(boat(in).rimDips()));
        bind("boat-limit", in -> {
            Shape shape = Bodies.shape(in);
            return Boat.limitMass(shape.hollow().orElseThrow(), 1000) / (1000 * shape.volume());
        });
        bind("mesh-boat-draft", in -> inMillimetres(boat(in, mesh(in)).draft()));
        bind("mesh-boat-freeboard", in -> inMillimetres(boat(in, mesh(in)).rimFreeboard()));
        bind("mesh-boat-gm", in -> inMillimetres(boat(in, mesh(in)).gmSmaller()));
        bind("mesh-boat-rim-dips", in -> Math.toDegrees(boat(in, mesh(in)).rimDips()));
        bind("mesh-boat-limit", in -> BoatLimit.displaced(mesh(in), 1000) / mesh(in).volume());
    }

    private void bell() {
        bind("bell-gm", in -> inMillimetres(bell(in).metacentricHeight(in.number("s"))));
        bind("bell-water", in -> inMillimetres(bell(in).waterHeight(in.number("gas_share"))));
        bind("bell-spills", in -> Math.toDegrees(bell(in).spillHeel(in.number("gas_share"))));
        bind(
                "bell-squeezed",
                in -> HemisphericalBell.squeezed(
                        in.millimetres("depth_mm"), in.number("p0_Pa"), in.number("rho_kg_per_m3"), 9.80665));
    }

    private void limits() {
        bind("cylinder-limit", LimitDensities::cylinder);
        bind("cube-limit", LimitDensities::cube);
        bind("cube-equal", LimitDensities::cubeEqualEnergies);
        bind("bar-angle", LimitDensities::barAngle);
        bind("cone-limit", LimitDensities::cone);
        bind("cone-angle", LimitDensities::coneAngle);
    }

    private static Floating afloat(Inputs in) {
        return Floating.of(hull(in), in.number("s"), Bodies.up(in));
    }

    private static Hull hull(Inputs in) {
        return Bodies.shape(in).hull().orElseThrow();
    }

    /** Open side up, its hollow dry; s is the density of the shell against the water. */
    private static Boat boat(Inputs in) {
        return boat(in, Bodies.shape(in));
    }

    private static Shape mesh(Inputs in) {
        return TurnedBowl.of(in.millimetres("R_mm"), in.millimetres("r_mm"), (int) in.number("around"));
    }

    private static Boat boat(Inputs in, Shape shell) {
        Hollow hollow = shell.hollow().orElseThrow();
        return Boat.of(hollow, shell.centroid(), in.number("s") * shell.volume());
    }

    private static HemisphericalBell bell(Inputs in) {
        return new HemisphericalBell(in.millimetres("R_mm"), in.millimetres("r_mm"));
    }

    /** A ball of two half balls of different density, the heavier one below. */
    private static double halves(Inputs in) {
        Hull ball = hull(in);
        double below = in.number("s_below");
        double above = in.number("s_above");
        double radius = in.millimetres("R_mm");
        double centre = radius - 3 * radius / 8 * (below - above) / (below + above);
        double displaced = (below + above) / 2 * ball.volume();
        return inMillimetres(
                Stability.of(ball, new Vec3(0, 0, centre), Vec3.UP, displaced).gmSmaller());
    }

    /** First moment of the displaced volume about the water plane, over the fourth power of the side a. */
    private static double firstMoment(Inputs in) {
        Floating body = afloat(in);
        double depth = body.draft().level() - body.buoyancy().dot(body.up());
        return depth * body.cut().volume / Math.pow(in.millimetres("a_mm"), 4);
    }
}
