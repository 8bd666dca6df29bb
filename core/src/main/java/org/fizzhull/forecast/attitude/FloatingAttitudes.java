package org.fizzhull.forecast.attitude;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.forecast.result.FloatingAttitude;
import org.fizzhull.geometry.Hollow;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.hydrostatics.Attitude;
import org.fizzhull.hydrostatics.Attitudes;
import org.fizzhull.hydrostatics.Boat;
import org.fizzhull.piece.Piece;
import org.fizzhull.shape.Shape;

/**
 * Finds the ways a piece floats as it is, without fizz.
 *
 * <ol>
 *   <li>A hollow set down open side up is a boat: its attitude with the hollow dry comes first, where it is stable and
 *       its rim is out of the water.
 *   <li>With the hollow flooded, or without one, the hull is let go from many attitudes ({@link Attitudes}); those in
 *       which it comes to rest follow, likeliest first.
 * </ol>
 *
 * <p>The centre of mass counts what lies on the piece and in it. A shape without a hull has no attitudes. Cost: some
 * hundredths of a second, of a mesh of 100,000 facets seconds. Used for {@link org.fizzhull.forecast.Forecast#attitudes}.
 */
public final class FloatingAttitudes {
    /** The piece, with the weight of the central values. */
    private final Piece piece;
    /** Its shape, with what lies on it and in it. */
    private final Shape shape;
    /** Density of the bath, kg/m3. */
    private final double waterDensity;
    /** Whether it is set down open side up. */
    private final boolean placed;

    /** Takes a question and its piece. */
    private FloatingAttitudes(Question question, Piece piece) {
        this.piece = piece;
        shape = piece.shape();
        waterDensity = question.bath().density();
        placed = question.into() == Question.IntoBath.PLACED;
    }

    /**
     * {@return the attitudes in which the piece of a question floats, likeliest first; the dry boat of a placed open
     * shape before them}
     *
     * @param question what is asked
     * @param piece the central piece
     */
    public static List<FloatingAttitude> of(Question question, Piece piece) {
        FloatingAttitudes found = new FloatingAttitudes(question, piece);
        List<FloatingAttitude> all = new ArrayList<>();
        Optional<Hollow> hollow = found.shape.hollow();
        if (hollow.isPresent() && found.placed) {
            found.boat(hollow.get(), all);
        }
        Optional<Hull> hull = found.shape.hull();
        if (hull.isPresent()) {
            found.flooded(hull.get(), all);
        }
        return all;
    }

    /** Adds the attitude with the hollow dry, where there is one. */
    private void boat(Hollow hollow, List<FloatingAttitude> into) {
        // heavier than the closed hull carries up to its rim: it goes down, however it is set
        double displaced = piece.mass() / waterDensity;
        if (displaced >= hollow.carried()) {
            return;
        }
        Boat boat = Boat.of(hollow, massCentre(shape.insetMass(), piece.mass()), displaced);
        if (boat.gmSmaller() > 0 && boat.rimFreeboard() > 0) {
            into.add(new FloatingAttitude(
                    boat.up(),
                    boat.draft(),
                    boat.rimFreeboard(),
                    boat.immersedFraction(),
                    boat.gmSmaller(),
                    false,
                    OptionalDouble.empty(),
                    FloatingAttitude.Cavity.DRY,
                    FloatingAttitude.Topping.NONE,
                    OptionalDouble.of(boat.rimDips())));
        }
    }

    /** An inset outside the hull is taken as under water: its weight counts less the water it pushes aside. */
    private void flooded(Hull hull, List<FloatingAttitude> into) {
        // its mass and centre as the hull has to carry them: what lies outside it is lifted by its own water
        double lift = waterDensity * (shape.insetVolume() - shape.insetInsideHull());
        double mass = piece.mass() - lift;
        if (!(mass > 0) || mass >= waterDensity * hull.volume()) {
            return;
        }
        Vec3 centre = massCentre(shape.insetMass() - lift, mass);
        FloatingAttitude.Cavity cavity =
                shape.hollow().isPresent() ? FloatingAttitude.Cavity.FLOODED : FloatingAttitude.Cavity.NONE;
        for (Attitude way : Attitudes.find(hull, centre, mass, waterDensity)) {
            into.add(new FloatingAttitude(
                    way.up(),
                    way.draft(),
                    way.freeboard(),
                    way.immersedFraction(),
                    way.gmSmaller(),
                    way.turnsFreely(),
                    OptionalDouble.of(way.share()),
                    cavity,
                    ToppingPlace.of(shape, hull, way.up(), way.draft()),
                    OptionalDouble.empty()));
        }
    }

    /**
     * Centre of mass in the body frame, m.
     *
     * @param insetMass mass of what lies on the piece and in it, less what it displaces outside the hull, kg
     * @param mass of the whole, kg, likewise
     */
    private Vec3 massCentre(double insetMass, double mass) {
        Vec3 body = shape.centroid();
        return insetMass == 0
                ? body
                : body.plus(shape.insetCentroid().minus(body).times(insetMass / mass));
    }
}
