package org.fizzhull.forecast;

import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.numeric.Vec3;
import org.fizzhull.shape.Hull;
import org.fizzhull.shape.Loaded;
import org.fizzhull.shape.PolyhedronHull;
import org.fizzhull.shape.Shape;

/** Whether the layer on top of a piece shows in an attitude: where its highest part lies to the water. */
final class ToppingPlace {
    /** The layer covers what lies above this share of the height as listed (assumed). */
    private static final double TOP = 0.97;

    private final Vec3 up;
    private final double least;
    private double low = Double.POSITIVE_INFINITY;
    private double high = Double.NEGATIVE_INFINITY;

    private ToppingPlace(Vec3 up, double least) {
        this.up = up;
        this.least = least;
    }

    /**
     * For a hull with its {@code up} upward.
     *
     * @param draft depth of its lowest point under the water, m
     */
    static Rest.Topping of(Shape shape, Hull hull, Vec3 up, double draft) {
        if (!(shape instanceof Loaded loaded) || loaded.toppings().isEmpty()) {
            return Rest.Topping.NONE;
        }
        ToppingPlace place = new ToppingPlace(up, TOP * hull.reach(0, 0, 1));
        if (hull instanceof PolyhedronHull body) {
            place.look(body.mesh());
        } else {
            place.lookRound(hull);
        }
        double water = draft - hull.reach(-up.x(), -up.y(), -up.z());
        double thickness = loaded.toppingHeight() * up.z();
        if (Math.min(place.low, place.low + thickness) >= water) {
            return Rest.Topping.SHOWS;
        }
        return Math.max(place.high, place.high + thickness) <= water
                ? Rest.Topping.UNDER_WATER
                : Rest.Topping.AT_WATER_LINE;
    }

    private void look(TriangleMesh mesh) {
        for (int v = 0; v < mesh.vertexCount(); v++) {
            Vec3 point = new Vec3(mesh.at(v, 0), mesh.at(v, 1), mesh.at(v, 2));
            if (point.z() >= least) {
                see(point.dot(up));
            }
        }
    }

    /** The section of a round body lies in the plane in which its axis leans, where the ends of the layer are. */
    private void lookRound(Hull hull) {
        double side = Math.hypot(up.x(), up.y());
        for (double[][] outline : hull.section(up)) {
            for (double[] point : outline) {
                if (point[0] * side + point[1] * up.z() >= least) {
                    see(point[1]);
                }
            }
        }
    }

    private void see(double height) {
        low = Math.min(low, height);
        high = Math.max(high, height);
    }
}
